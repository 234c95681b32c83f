package setwright.quantity;

import static setwright.quantity.Definitions.CUBIC_INCH;
import static setwright.quantity.Definitions.FOOT;
import static setwright.quantity.Definitions.HORSEPOWER;
import static setwright.quantity.Definitions.INCH;
import static setwright.quantity.Definitions.PI;
import static setwright.quantity.Definitions.POUND;
import static setwright.quantity.Definitions.POUND_FORCE;

import java.util.ArrayList;
import java.util.List;

/**
 * A unit as people write it: its printed symbol, the other spellings that are read (each unit has an ASCII one), and
 * the factor that takes a number in this unit to the unit that the program computes in ({@link Dimension#inside()}).
 *
 * <p>The joint of a product is written {@code ·} here and read as {@code - * ·}, a blank or nothing; {@code ² ³ µ} are
 * read as {@code 2 ^2 3 ^3 u} too. Capitals do not matter when a unit is read.
 */
public enum Unit {
    MM(Dimension.LENGTH, "mm", whole(1), "millimetre", "millimetres", "millimeter", "millimeters"),
    CM(Dimension.LENGTH, "cm", whole(10)),
    M(Dimension.LENGTH, "m", whole(1000), "metre", "metres", "meter", "meters"),
    UM(Dimension.LENGTH, "µm", part(1000), "micron", "microns"),
    IN(Dimension.LENGTH, "in", INCH, "\"", "inch", "inches", "''", "″", "”"),
    FT(Dimension.LENGTH, "ft", FOOT, "foot", "feet"),
    THOU(Dimension.LENGTH, "thou", INCH.over(whole(1000)), "thous"),

    RAD(Dimension.ANGLE, "rad", whole(1)),
    DEG(Dimension.ANGLE, "°", PI.over(whole(180)), "deg", "d", "degree", "degrees", "º"),
    ARC_MINUTE(Dimension.ANGLE, "'", PI.over(whole(10_800)), "m", "min", "arcmin", "′", "’"),
    ARC_SECOND(Dimension.ANGLE, "\"", PI.over(whole(648_000)), "s", "sec", "arcsec", "″", "”", "''"),

    SECOND(Dimension.TIME, "s", whole(1), "sec", "second", "seconds"),
    MINUTE(Dimension.TIME, "min", whole(60), "minute", "minutes"),
    HOUR(Dimension.TIME, "h", whole(3600), "hr", "hour", "hours"),

    N(Dimension.FORCE, "N", whole(1)),
    KN(Dimension.FORCE, "kN", whole(1000)),
    LBF(Dimension.FORCE, "lbf", POUND_FORCE, "lb", "lbs"),

    N_M(Dimension.TORQUE, "N·m", whole(1000)),
    N_MM(Dimension.TORQUE, "N·mm", whole(1)),
    LBF_FT(Dimension.TORQUE, "lbf·ft", POUND_FORCE.times(FOOT), "ft·lb", "ft·lbf", "lb·ft", "ft·lbs"),
    LBF_IN(Dimension.TORQUE, "lbf·in", POUND_FORCE.times(INCH), "in·lb", "in·lbf", "lb·in", "in·lbs"),

    W(Dimension.POWER, "W", whole(1)),
    KW(Dimension.POWER, "kW", whole(1000)),
    HP(Dimension.POWER, "hp", HORSEPOWER),

    N_PER_MM2(Dimension.STRESS, "N/mm²", whole(1), "MPa"),
    GPA(Dimension.STRESS, "GPa", whole(1000), "kN/mm²"),
    PSI(Dimension.STRESS, "psi", POUND_FORCE.over(INCH.times(INCH)), "lbf/in²", "lb/in²"),
    KW_S_PER_CM3(Dimension.STRESS, "kW·s/cm³", whole(1000), "J/mm³", "W·s/mm³"),
    HP_MIN_PER_IN3(
            Dimension.STRESS,
            "hp·min/in³",
            HORSEPOWER.times(1000).times(60).over(CUBIC_INCH),
            "hp/in³/min",
            "hp/(in³/min)"),

    RPM(Dimension.TURNING, "rev/min", PI.over(whole(30)), "rpm", "r/min", "1/min", "/min"),
    RAD_PER_S(Dimension.TURNING, "rad/s", whole(1)),

    M_PER_MIN(Dimension.SPEED, "m/min", whole(1000).over(whole(60))),
    MM_PER_MIN(Dimension.SPEED, "mm/min", part(60)),
    M_PER_S(Dimension.SPEED, "m/s", whole(1000)),
    MM_PER_S(Dimension.SPEED, "mm/s", whole(1)),
    FT_PER_MIN(Dimension.SPEED, "ft/min", FOOT.over(whole(60)), "sfm", "fpm", "sfpm"),
    IN_PER_MIN(Dimension.SPEED, "in/min", INCH.over(whole(60)), "ipm"),

    KG(Dimension.MASS, "kg", whole(1)),
    G(Dimension.MASS, "g", part(1000)),
    LB(Dimension.MASS, "lb", POUND, "lbs"),

    KG_PER_M3(Dimension.DENSITY, "kg/m³", part(1_000_000_000)),
    G_PER_CM3(Dimension.DENSITY, "g/cm³", part(1_000_000)),
    LB_PER_IN3(Dimension.DENSITY, "lb/in³", POUND.over(CUBIC_INCH)),

    N_PER_MM(Dimension.STIFFNESS, "N/mm", whole(1)),
    N_PER_UM(Dimension.STIFFNESS, "N/µm", whole(1000), "kN/mm"),
    LBF_PER_IN(Dimension.STIFFNESS, "lbf/in", POUND_FORCE.over(INCH), "lb/in"),

    MM3_PER_S(Dimension.VOLUME_RATE, "mm³/s", whole(1)),
    CM3_PER_MIN(Dimension.VOLUME_RATE, "cm³/min", whole(1000).over(whole(60))),
    IN3_PER_MIN(Dimension.VOLUME_RATE, "in³/min", CUBIC_INCH.over(whole(60))),

    MM2(Dimension.AREA, "mm²", whole(1)),
    IN2(Dimension.AREA, "in²", INCH.times(INCH)),
    HZ(Dimension.FREQUENCY, "Hz", whole(1)),
    KELVIN(Dimension.TEMPERATURE_STEP, "K", whole(1)),
    CELSIUS_STEP(Dimension.TEMPERATURE_STEP, "°C", whole(1), "C", "degC"),
    FAHRENHEIT_STEP(Dimension.TEMPERATURE_STEP, "°F", whole(5).over(whole(9)), "F", "degF"),
    PER_KELVIN(Dimension.EXPANSION, "1/K", whole(1), "/K"),
    MM_PER_REV(Dimension.LENGTH, "mm/rev", whole(1), "mm/turn"),
    IN_PER_REV(Dimension.LENGTH, "in/rev", INCH, "in/turn", "ipr"),
    MM_PER_TOOTH(Dimension.LENGTH, "mm/tooth", whole(1)),
    IN_PER_TOOTH(Dimension.LENGTH, "in/tooth", INCH, "ipt"),
    NONE(Dimension.RATIO, "", whole(1)),
    PERCENT(Dimension.RATIO, "%", part(100), "percent");

    private final Dimension dimension;
    private final String symbol;
    private final Rational exactFactor;
    private final double factor;
    private final List<String> spellings;

    Unit(Dimension dimension, String symbol, Rational factor, String... otherSpellings) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.exactFactor = factor;
        this.factor = factor.nearest();
        this.spellings = spelled(symbol, otherSpellings);
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
        return spellings.subList(1, spellings.size());
    }

    /** The symbol and all other spellings. */
    List<String> spellings() {
        return spellings;
    }

    /** The number in the unit that the program computes in, for one of this unit; exact but for the digits of π. */
    Rational factor() {
        return exactFactor;
    }

    /** A number in this unit as the program holds it. */
    public double toInside(double number) {
        return number * factor;
    }

    /** A value as the program holds it, as a number in this unit. */
    public double fromInside(double inside) {
        return inside / factor;
    }

    /** What is said behind a number: the symbol, with a blank before it where one is written. */
    String afterNumber() {
        return symbol.isEmpty() || "°'\"".contains(symbol) ? symbol : " " + symbol;
    }

    private static Rational whole(long number) {
        return Rational.of(number);
    }

    private static Rational part(long ofHowMany) {
        return Rational.of(1, ofHowMany);
    }

    private static List<String> spelled(String symbol, String... others) {
        List<String> all = new ArrayList<>(List.of(symbol));
        all.addAll(List.of(others));
        all = with(all, "·", "-", "*", " ", "");
        all = with(all, "²", "2", "^2");
        all = with(all, "³", "3", "^3");
        all = with(all, "µ", "u", "μ");
        return List.copyOf(all);
    }

    private static List<String> with(List<String> spellings, String letter, String... written) {
        List<String> all = new ArrayList<>(spellings);
        for (String spelling : spellings) {
            for (String way : written) {
                if (spelling.contains(letter)) {
                    all.add(spelling.replace(letter, way));
                }
            }
        }
        return all;
    }
}
