package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * Where the knee may stand for an operation, as the height of the nose over the table with the quill in; millimetres. For
 * an operation that the knee feeds it is the height at full depth.
 *
 * @param low lowest height of the nose
 * @param high highest height of the nose; below {@code low} where the window is closed
 * @param changeFrom the lowest height at which the tool can be changed over the hole; {@code low} where any height does
 */
public record KneeWindow(String operation, double low, double high, double changeFrom, Bound bound) {
    private static final Symbol PROJECTION = symbol("P", "projection of the tool below the nose", Unit.MM, 0, 300);
    private static final Symbol CROSSING = symbol("c", "crossing height", Unit.MM, 0, 500);
    private static final Symbol DEEPEST = symbol("b", "deepest point", Unit.MM, 0, 500);
    private static final Symbol STROKE = symbol("s", "quill stroke", Unit.MM, 0, 200);
    private static final Source STACK = Source.of("computed: stack-up of crossing height, depth, projection and quill");

    /** Lower than this, the quill cannot draw the point up to the crossing height. */
    public static final Formula LOWEST_NOSE = new Formula(
            "H = c + P",
            symbol("H", "lowest nose height", Unit.MM, 0, 1000),
            List.of(CROSSING, PROJECTION),
            v -> lowestNose(v[0], v[1]),
            STACK);
    /** Higher than this, the quill does not bring the point down to its depth. */
    public static final Formula HIGHEST_NOSE = new Formula(
            "H = b + P + s",
            symbol("H", "highest nose height", Unit.MM, 0, 1000),
            List.of(DEEPEST, PROJECTION, STROKE),
            v -> highestNose(v[0], v[1], v[2]),
            STACK);

    /** What closes a window. */
    public enum Bound {
        OPEN,
        /** The quill is shorter than the way from the crossing height to the deepest point. */
        QUILL_STROKE,
        /** The knee does not come up far enough. */
        NOSE_NOT_LOW_ENOUGH,
        /** The knee does not go down far enough. */
        NOSE_NOT_HIGH_ENOUGH
    }

    public static double lowestNose(double crossing, double projection) {
        return crossing + projection;
    }

    public static double highestNose(double deepest, double projection, double stroke) {
        return deepest + projection + stroke;
    }

    public static KneeWindow of(HeightsOfUse use, NoseRange machine) {
        return switch (use.feed()) {
            case QUILL ->
                window(
                        use.operation(),
                        lowestNose(use.crossing(), use.projection()),
                        highestNose(use.deepest(), use.projection(), machine.quillStroke()),
                        machine.lowest(),
                        machine.highest());
            case KNEE ->
                // The knee also goes down by the way back to the crossing height.
                window(
                        use.operation(),
                        lowestNose(use.deepest(), use.projection()),
                        highestNose(use.deepest(), use.projection(), Math.min(use.quillOut(), machine.quillStroke())),
                        machine.lowest(),
                        machine.highest() - (use.crossing() - use.deepest()));
        };
    }

    private static KneeWindow window(String operation, double low, double high, double lowest, double highest) {
        Bound bound = low > high
                ? Bound.QUILL_STROKE
                : high < lowest ? Bound.NOSE_NOT_LOW_ENOUGH : low > highest ? Bound.NOSE_NOT_HIGH_ENOUGH : Bound.OPEN;
        double from = bound == Bound.QUILL_STROKE ? low : Math.max(low, lowest);
        double to = bound == Bound.QUILL_STROKE ? high : Math.min(high, highest);
        return new KneeWindow(operation, from, to, from, bound);
    }

    public boolean isOpen() {
        return bound == Bound.OPEN;
    }

    /** By how much a closed window is short; nought for an open one. */
    public double missing() {
        return Math.max(0, low - high);
    }

    /** The same window, wishing for a height at which the tool can be changed over the hole. */
    public KneeWindow changedFrom(double height) {
        return new KneeWindow(operation, low, high, Math.max(low, height), bound);
    }

    /** Every height that some tool serves that is set out further by up to so much. */
    KneeWindow reaching(double more) {
        return new KneeWindow(operation, low, high + more, changeFrom, bound);
    }

    boolean holds(double height) {
        return low <= height && height <= high;
    }
}
