package setwright.quantity;

import java.util.List;

/**
 * A unit as people write it: its printed symbol, the other spellings that are read (each unit has an ASCII one), and
 * the factor that takes a number in this unit to the unit that the program computes in ({@link Dimension#inside()}).
 */
public enum Unit {
    MM(Dimension.LENGTH, "mm", 1),
    CM(Dimension.LENGTH, "cm", 10),
    M(Dimension.LENGTH, "m", 1000),
    UM(Dimension.LENGTH, "µm", 1e-3, "um", "μm", "micron"),
    IN(Dimension.LENGTH, "in", 25.4, "\"", "inch", "inches", "''", "″", "”"),
    FT(Dimension.LENGTH, "ft", 304.8, "foot", "feet"),
    THOU(Dimension.LENGTH, "thou", 0.0254, "mil"),

    RAD(Dimension.ANGLE, "rad", 1),
    DEG(Dimension.ANGLE, "°", Math.PI / 180, "deg", "d"),
    ARC_MINUTE(Dimension.ANGLE, "'", Math.PI / 10800, "m", "arcmin", "′"),
    ARC_SECOND(Dimension.ANGLE, "\"", Math.PI / 648000, "s", "arcsec", "″"),

    SECOND(Dimension.TIME, "s", 1, "sec"),
    MINUTE(Dimension.TIME, "min", 60),
    HOUR(Dimension.TIME, "h", 3600),

    N(Dimension.FORCE, "N", 1),
    KN(Dimension.FORCE, "kN", 1000),
    LBF(Dimension.FORCE, "lbf", 4.4482216152605, "lb"),

    N_M(Dimension.TORQUE, "N·m", 1000, "N m", "Nm", "N*m", "N-m"),
    N_MM(Dimension.TORQUE, "N·mm", 1, "N mm", "Nmm", "N*mm", "N-mm"),
    LBF_FT(Dimension.TORQUE, "lbf·ft", 1355.8179483314004, "lbf-ft", "lbf*ft", "ft-lb", "ft-lbf", "ft·lbf", "lb-ft"),
    LBF_IN(Dimension.TORQUE, "lbf·in", 112.9848290276167, "lbf-in", "lbf*in", "in-lb", "in-lbf", "in·lbf", "lb-in"),

    W(Dimension.POWER, "W", 1),
    KW(Dimension.POWER, "kW", 1000),
    HP(Dimension.POWER, "hp", 745.6998715822702),

    N_PER_MM2(Dimension.STRESS, "N/mm²", 1, "N/mm2", "MPa"),
    GPA(Dimension.STRESS, "GPa", 1000, "kN/mm2", "kN/mm²"),
    PSI(Dimension.STRESS, "psi", 0.006894757293168361),
    KW_S_PER_CM3(Dimension.STRESS, "kW·s/cm³", 1000, "kW*s/cm3", "kW s/cm3", "kW-s/cm3", "J/mm3", "J/mm³"),
    HP_MIN_PER_IN3(Dimension.STRESS, "hp·min/in³", 2730.3735, "hp*min/in3", "hp-min/in3", "hp/in3/min"),

    RPM(Dimension.TURNING, "rev/min", Math.PI / 30, "rpm", "r/min", "1/min"),
    RAD_PER_S(Dimension.TURNING, "rad/s", 1),

    M_PER_MIN(Dimension.SPEED, "m/min", 1000.0 / 60),
    MM_PER_MIN(Dimension.SPEED, "mm/min", 1.0 / 60),
    M_PER_S(Dimension.SPEED, "m/s", 1000),
    MM_PER_S(Dimension.SPEED, "mm/s", 1),
    FT_PER_MIN(Dimension.SPEED, "ft/min", 304.8 / 60, "sfm", "fpm"),
    IN_PER_MIN(Dimension.SPEED, "in/min", 25.4 / 60, "ipm"),

    KG(Dimension.MASS, "kg", 1),
    G(Dimension.MASS, "g", 1e-3),
    LB(Dimension.MASS, "lb", 0.45359237),

    KG_PER_M3(Dimension.DENSITY, "kg/m³", 1e-9, "kg/m3"),
    LB_PER_IN3(Dimension.DENSITY, "lb/in³", 2.767990471e-5, "lb/in3"),

    N_PER_MM(Dimension.STIFFNESS, "N/mm", 1),
    N_PER_UM(Dimension.STIFFNESS, "N/µm", 1000, "N/um"),
    LBF_PER_IN(Dimension.STIFFNESS, "lbf/in", 0.1751268352464, "lb/in"),

    MM3_PER_S(Dimension.VOLUME_RATE, "mm³/s", 1, "mm3/s"),
    CM3_PER_MIN(Dimension.VOLUME_RATE, "cm³/min", 1000.0 / 60, "cm3/min"),
    IN3_PER_MIN(Dimension.VOLUME_RATE, "in³/min", 16387.064 / 60, "in3/min"),

    MM2(Dimension.AREA, "mm²", 1, "mm2"),
    IN2(Dimension.AREA, "in²", 645.16, "in2"),
    HZ(Dimension.FREQUENCY, "Hz", 1),
    KELVIN(Dimension.TEMPERATURE_STEP, "K", 1),
    FAHRENHEIT_STEP(Dimension.TEMPERATURE_STEP, "°F", 5.0 / 9, "F"),
    PER_KELVIN(Dimension.EXPANSION, "1/K", 1),
    MM_PER_REV(Dimension.LENGTH, "mm/rev", 1, "mm/turn"),
    IN_PER_REV(Dimension.LENGTH, "in/rev", 25.4, "in/turn"),
    MM_PER_TOOTH(Dimension.LENGTH, "mm/tooth", 1),
    IN_PER_TOOTH(Dimension.LENGTH, "in/tooth", 25.4),
    NONE(Dimension.RATIO, "", 1),
    PERCENT(Dimension.RATIO, "%", 0.01);

    private final Dimension dimension;
    private final String symbol;
    private final double factor;
    private final List<String> spellings;

    Unit(Dimension dimension, String symbol, double factor, String... otherSpellings) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.factor = factor;
        this.spellings = List.of(otherSpellings);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** As printed, for instance {@code N·m}. */
    public String symbol() {
        return symbol;
    }

    /** Other spellings that are read, for instance {@code Nm}; not the symbol itself. */
    public List<String> otherSpellings() {
        return spellings;
    }

    /** A number in this unit as the program holds it. */
    public double toInside(double number) {
        return number * factor;
    }

    /** A value as the program holds it, as a number in this unit. */
    public double fromInside(double inside) {
        return inside / factor;
    }
}
