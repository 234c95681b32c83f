package setwright.location.budget;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.location.Contributor;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** How a part comes to lie, and how square head and jaw stand; half-widths in millimetres. */
public final class Seating {
    /** Head trammed within 0.001 in on a sweep of 6 in. */
    public static final double HEAD = 1.0 / 6000;

    /** Jaw clocked within 0.001 in over 6 in. */
    public static final double JAW = 1.0 / 6000;

    /** Out of square of slides and of a jaw with its bed, 0.02 mm over 100 mm. */
    public static final double SQUARENESS = 0.0002;

    /** A slide goes straight within 0.01 mm over 300 mm. */
    public static final double STRAIGHTNESS = 0.01 / 300;

    /** Part on parallels or packing that were tapped and tried. */
    public static final double SEAT = 0.01;

    /** A part that is clocked in, or held as it was when its edges were found. */
    public static final double CLOCKED = 0.00635;

    /** One part after the other against jaw and stop, wiped each time. */
    public static final double STOPPED = 0.0127;

    /** What a length is out where it lies at an angle to its true direction. */
    public static final Formula SKEW = new Formula(
            "e = l s",
            symbol("e", "out by the skew", Unit.MM, 0, 1),
            List.of(symbol("l", "length", Unit.MM, 0, 1000), symbol("s", "slope", Unit.NONE, 0, 0.001)),
            v -> skew(v[0], v[1]),
            Source.of("computed: small angle"));

    private static final Source COMMON = Source.of("common practice");
    private static final Source TRAM = Source.of("common practice: head within 0.001 in on a sweep of 6 in");
    private static final Source CLOCK = Source.of("common practice: jaw within 0.001 in over 6 in");

    private Seating() {}

    public static double skew(double length, double slope) {
        return length * slope;
    }

    public static Contributor seat() {
        return Contributor.eachAxis("seating on the packing", SEAT, COMMON)
                .halvedBy("trying the parallels again after tightening");
    }

    /** A hole, or a wall cut by the flank, that leans over its depth. */
    public static Contributor lean(double depth) {
        return Contributor.oneDirection("lean of the head over the depth", skew(depth, HEAD), TRAM)
                .halvedBy("tramming the head closer");
    }

    /** A length laid along a jaw that is not quite along the slide. */
    public static Contributor jaw(double length) {
        return Contributor.eachAxis("skew of the jaw over the length", skew(length, JAW), CLOCK)
                .halvedBy("clocking the jaw closer");
    }

    public static Contributor squareness(double length) {
        return Contributor.eachAxis("squareness of slides and jaw over the length", skew(length, SQUARENESS), COMMON)
                .halvedBy("indicating the face before the cut");
    }

    /** A divided place that is out by an angle. */
    public static Contributor index(double radius, double angle) {
        return Contributor.oneDirection(
                        "index at this radius", skew(radius, angle), Source.of("common practice: half a division"))
                .halvedBy("a vernier, or a plate with holes");
    }
}
