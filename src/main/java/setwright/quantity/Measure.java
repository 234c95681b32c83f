package setwright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a field asks for: its dimension, and the unit in which metric and inch people read and type it. */
public enum Measure {
    LENGTH(Unit.MM, Unit.IN),
    SMALL_LENGTH(Unit.UM, Unit.THOU),
    ANGLE(Unit.DEG, Unit.DEG),
    TIME(Unit.MINUTE, Unit.MINUTE),
    SECONDS(Unit.SECOND, Unit.SECOND),
    FORCE(Unit.N, Unit.LBF),
    TORQUE(Unit.N_M, Unit.LBF_FT),
    POWER(Unit.KW, Unit.HP),
    STRESS(Unit.N_PER_MM2, Unit.N_PER_MM2),
    UNIT_POWER(Unit.KW_S_PER_CM3, Unit.HP_MIN_PER_IN3),
    SPINDLE_SPEED(Unit.RPM, Unit.RPM),
    CUTTING_SPEED(Unit.M_PER_MIN, Unit.FT_PER_MIN),
    FEED(Unit.MM_PER_MIN, Unit.IN_PER_MIN),
    FEED_PER_REV(Unit.MM_PER_REV, Unit.IN_PER_REV),
    FEED_PER_TOOTH(Unit.MM_PER_TOOTH, Unit.IN_PER_TOOTH),
    MASS(Unit.KG, Unit.LB),
    DENSITY(Unit.KG_PER_M3, Unit.LB_PER_IN3),
    STIFFNESS(Unit.N_PER_MM, Unit.LBF_PER_IN),
    REMOVAL_RATE(Unit.CM3_PER_MIN, Unit.IN3_PER_MIN),
    AREA(Unit.MM2, Unit.IN2),
    FREQUENCY(Unit.HZ, Unit.HZ),
    TEMPERATURE_STEP(Unit.KELVIN, Unit.FAHRENHEIT_STEP),
    EXPANSION(Unit.PER_KELVIN, Unit.PER_KELVIN),
    PERCENT(Unit.PERCENT, Unit.PERCENT),
    RATIO(Unit.NONE, Unit.NONE);

    private final Unit metric;
    private final Unit inch;
    private final List<Unit> accepted;

    Measure(Unit metric, Unit inch) {
        this.metric = metric;
        this.inch = inch;
        this.accepted = Stream.concat(Stream.of(metric, inch), Arrays.stream(Unit.values()))
                .filter(this::accepts)
                .distinct()
                .toList();
    }

    public Unit unit(UnitSystem system) {
        return switch (system) {
            case METRIC -> metric;
            case INCH -> inch;
        };
    }

    public Dimension dimension() {
        return metric.dimension();
    }

    /** The first measure that metric people read in this unit; empty where none is. */
    static Optional<Measure> readIn(Unit unit) {
        return Arrays.stream(values()).filter(measure -> measure.metric == unit).findFirst();
    }

    /** In the trade's words, for instance {@code feed per tooth}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Every unit in which it may be typed, those of its own columns first. */
    public List<Unit> accepted() {
        return accepted;
    }

    /** A feed per tooth may be typed as a plain length, but not as one per turn, and a length as neither. */
    private boolean accepts(Unit unit) {
        return unit.dimension() == dimension()
                && (dimension() != Dimension.LENGTH
                        || per(unit).isEmpty()
                        || per(unit).equals(per(metric)));
    }

    private static String per(Unit unit) {
        int slash = unit.symbol().indexOf('/');
        return slash < 0 ? "" : unit.symbol().substring(slash);
    }
}
