package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A tool from its point up to the spindle nose; millimetres.
 *
 * @param gaugeProjection from the nose of the spindle down to the face of the holder; nought for a collet in the spindle
 * @param stickOut from the face of the holder down to the point of the tool
 */
public record ToolStack(double gaugeProjection, double stickOut) {
    public static final String NOSE = "nose";
    public static final String HOLDER_FACE = "holder face";
    public static final String TOOL_POINT = "tool point";

    private static final Symbol POINT = symbol("z", "height of the tool point", Unit.MM, 0, 500);
    private static final Symbol GAUGE = symbol("P", "projection of the holder", Unit.MM, 0, 150);
    private static final Symbol STICK_OUT = symbol("S", "stick-out", Unit.MM, 0, 200);

    public static final Formula NOSE_HEIGHT = new Formula(
            "H = z + P + S",
            symbol("H", "height of the nose", Unit.MM, 0, 1000),
            List.of(POINT, GAUGE, STICK_OUT),
            v -> new ToolStack(v[1], v[2]).nose(v[0]),
            Source.of("computed: stack-up of point, stick-out and holder"));

    public ToolStack {
        if (gaugeProjection < 0 || stickOut < 0) {
            throw new IllegalArgumentException(
                    "A tool stands below the nose: projection " + gaugeProjection + ", stick-out " + stickOut + ".");
        }
    }

    /** From the nose down to the tool point. */
    public double projection() {
        return gaugeProjection + stickOut;
    }

    /** Height of the nose with the point at a height. */
    public double nose(double point) {
        return point + projection();
    }

    /** Height of the point with the nose at a height. */
    public double point(double nose) {
        return nose - projection();
    }

    /** Point, holder face and nose, rising. */
    public List<Level> levels(double point) {
        return List.of(
                new Level(TOOL_POINT, point), new Level(HOLDER_FACE, point + stickOut), new Level(NOSE, nose(point)));
    }
}
