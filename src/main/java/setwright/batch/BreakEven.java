package setwright.batch;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import java.util.OptionalDouble;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * When something bought or made once, such as soft jaws or a fixture, pays for itself; all of it in one unit, money or
 * minutes.
 *
 * @param once what it costs
 * @param before what a part costs without it
 * @param after what a part costs with it
 * @param setUpBefore set-up of the batch without it
 * @param setUpAfter set-up of the batch with it
 */
public record BreakEven(double once, double before, double after, double setUpBefore, double setUpAfter) {
    public static final Formula PARTS = new Formula(
            "N = (F + B - A) / (b - a)",
            symbol("N", "parts at which both cost alike", Unit.NONE, -1e6, 1e6),
            List.of(
                    symbol("F", "once", Unit.NONE, 0, 1000),
                    symbol("b", "each part before", Unit.NONE, 1, 100),
                    symbol("a", "each part after", Unit.NONE, 0, 0.9),
                    symbol("B", "set-up after", Unit.NONE, 0, 500),
                    symbol("A", "set-up before", Unit.NONE, 0, 500)),
            v -> equal(v[0], v[1] - v[2], v[3] - v[4]),
            Source.of("Jig and Fixture Design, section II p.94 (fliphtml5.com/zroi/qfam/JIG_AND_FIXTURE_DESIGN/110/);"
                    + " set-up times added by common practice"));

    public static BreakEven of(double once, double before, double after) {
        return new BreakEven(once, before, after, 0, 0);
    }

    /** The number of parts at which both cost alike; the saving of a part is above nought. */
    public static double equal(double once, double savedEach, double moreSetUp) {
        return (once + moreSetUp) / savedEach;
    }

    /** Where both cost alike; empty where a part is not cheaper with it. */
    public OptionalDouble equalAt() {
        return before > after
                ? OptionalDouble.of(Math.max(0, equal(once, before - after, setUpAfter - setUpBefore)))
                : OptionalDouble.empty();
    }

    /** The smallest whole number of parts that loses nothing by it. */
    public OptionalDouble parts() {
        var equal = equalAt();
        return equal.isPresent() ? OptionalDouble.of(Math.ceil(settled(equal.getAsDouble()))) : equal;
    }

    /** The smallest whole number of parts that gains by it. */
    public OptionalDouble gainsFrom() {
        var equal = equalAt();
        return equal.isPresent() ? OptionalDouble.of(Math.floor(settled(equal.getAsDouble())) + 1) : equal;
    }

    /** A whole number that the division missed by its rounding is that whole number. */
    private static double settled(double parts) {
        double whole = Math.rint(parts);
        return Math.abs(parts - whole) <= 1e-9 * Math.max(1, whole) ? whole : parts;
    }
}
