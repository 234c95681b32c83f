package setwright.location.layout;

import java.util.List;
import setwright.location.Place;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** The circle through three points. */
public record ThreePoints(Place centre, double diameter) {
    public static final Procedure CIRCLE = new Procedure(
            "circle through three points",
            List.of(
                    "the centre lies on the upright middle lines of two chords",
                    "the radius is its distance to a point"),
            Unit.MM,
            Source.of("computed: circumscribed circle of a triangle"));

    /** How flat a triangle may be: its height against its longest side. */
    private static final double FLAT = 1e-6;

    public static ThreePoints through(Place a, Place b, Place c) {
        double bx = b.x() - a.x();
        double by = b.y() - a.y();
        double cx = c.x() - a.x();
        double cy = c.y() - a.y();
        double twice = 2 * (bx * cy - by * cx);
        double spread = Math.max(bx * bx + by * by, cx * cx + cy * cy);
        if (!(Math.abs(twice) > FLAT * spread)) {
            throw new IllegalArgumentException(
                    "the three points lie on one line or on each other; no circle goes through.");
        }
        double x = (cy * (bx * bx + by * by) - by * (cx * cx + cy * cy)) / twice;
        double y = (bx * (cx * cx + cy * cy) - cx * (bx * bx + by * by)) / twice;
        return new ThreePoints(new Place(a.x() + x, a.y() + y), 2 * StrictMath.hypot(x, y));
    }
}
