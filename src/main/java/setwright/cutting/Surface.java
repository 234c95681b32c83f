package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** What the geometry of feed and edge leaves on the surface, before spring, wear and built-up edge. All in mm. */
public final class Surface {
    private static final Symbol NOSE = symbol("r", "nose radius", Unit.MM, 0.05, 20);
    private static final Symbol HEIGHT = symbol("Rt", "peak to valley", Unit.UM, 0.01, 2000);

    /** Nose radius of a turning, boring or face-milling edge; the feed is per tooth, or per turn where one stands proud. */
    public static final Formula PEAK_TO_VALLEY = new Formula(
            "Rt = 1000 f^2 / (8 r)",
            HEIGHT,
            List.of(symbol("f", "feed per tooth or per turn", Unit.MM, 0.005, 2), NOSE),
            a -> peakToValley(a[0], a[1]),
            Source.of("common practice: f² / (8 r), for feeds below twice the nose radius"));

    public static final Formula MEAN_ROUGHNESS = new Formula(
            "Ra = Rt / 4",
            symbol("Ra", "mean roughness", Unit.UM, 0.01, 500),
            List.of(HEIGHT),
            a -> meanRoughness(a[0]),
            Source.of("common practice: a quarter of peak to valley"));

    /** The ridge that a ball leaves between two passes. */
    public static final Formula CUSP = new Formula(
            "h = 500 (d - √(d^2 - s^2))",
            symbol("h", "cusp height", Unit.UM, 0.001, 2000),
            List.of(
                    symbol("d", "ball diameter", Unit.MM, 2, 100),
                    symbol("s", "spacing of the passes", Unit.MM, 0.01, 2)),
            a -> cusp(a[0], a[1]),
            Source.of("computed: geometry of two circles"));

    /** The waves that the teeth leave on a wall cut with their periphery. */
    public static final Formula TOOTH_MARKS = new Formula(
            "Rt = 1000 fz^2 / (4 D)",
            HEIGHT,
            List.of(
                    symbol("fz", "feed per tooth, or per turn with run-out", Unit.MM_PER_TOOTH, 0.005, 2),
                    symbol("D", "diameter", Unit.MM, 1, 200)),
            a -> toothMarks(a[0], a[1]),
            Source.of("common practice: vf² / (4 D n² z²) of the peripheral cut"));

    /** The diameter at which a ball end cuts at a depth below its equator. */
    public static final Formula BALL_AT_DEPTH = new Formula(
            "De = 2 √(ap (d - ap))",
            symbol("De", "diameter that cuts", Unit.MM, 0.1, 100),
            List.of(symbol("d", "ball diameter", Unit.MM, 2, 100), symbol("ap", "depth of cut", Unit.MM, 0.01, 2)),
            a -> ballAtDepth(a[0], a[1]),
            Source.of("computed: geometry of a circle"));

    private Surface() {}

    public static double peakToValley(double feed, double noseRadius) {
        return feed * feed / (8 * noseRadius);
    }

    public static double meanRoughness(double peakToValley) {
        return peakToValley / 4;
    }

    public static double cusp(double ballDiameter, double spacing) {
        return (ballDiameter - Math.sqrt(ballDiameter * ballDiameter - spacing * spacing)) / 2;
    }

    public static double toothMarks(double feedPerTooth, double diameter) {
        return feedPerTooth * feedPerTooth / (4 * diameter);
    }

    public static double ballAtDepth(double ballDiameter, double depth) {
        return 2 * Math.sqrt(depth * (ballDiameter - depth));
    }
}
