package setwright.geometry.plane;

/**
 * A stretch of an outline or of a path in plan, straight or round, run from one end to the other; in millimetres. Two
 * edges are as far apart as {@link Gap#between} says.
 */
public sealed interface Edge permits Straight, Arc {
    Point2 from();

    Point2 to();

    double length();

    /** The place at a fraction of the length: 0 is {@link #from()}, 1 is {@link #to()}. */
    Point2 at(double fraction);

    /** The fraction of the length at which a place of this edge lies. */
    double fraction(Point2 on);

    /** The stretch between two fractions of the length. */
    Edge part(double fromFraction, double toFraction);

    /** The place of this edge that is nearest to {@code p}. */
    Point2 nearest(Point2 p);

    /** The direction in which it runs at a fraction of its length, of length 1; of a point none at all. */
    Point2 heading(double fraction);

    /** One of its places that lie furthest in a direction. */
    Point2 furthest(double x, double y);

    PlanBox box();

    Edge reversed();

    Edge mapped(PlanMap map);

    /** The signed area between the origin and this edge, positive where it runs anticlockwise, with its moments. */
    Moments swept();

    Kind kind();

    enum Kind {
        STRAIGHT,
        ARC
    }
}
