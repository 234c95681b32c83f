package setwright.geometry.plane;

/** A straight edge; where both ends are one place it is a point. */
public record Straight(Point2 from, Point2 to) implements Edge {
    /** A point as an edge without length. */
    public static Straight point(Point2 at) {
        return new Straight(at, at);
    }

    public Point2 step() {
        return to.minus(from);
    }

    @Override
    public double length() {
        return from.distance(to);
    }

    @Override
    public Point2 at(double fraction) {
        return new Point2(from.x() + fraction * (to.x() - from.x()), from.y() + fraction * (to.y() - from.y()));
    }

    @Override
    public double fraction(Point2 on) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double squared = dx * dx + dy * dy;
        double along = (on.x() - from.x()) * dx + (on.y() - from.y()) * dy;
        return squared == 0 ? 0 : Math.max(0, Math.min(1, along / squared));
    }

    @Override
    public Straight part(double fromFraction, double toFraction) {
        return new Straight(at(fromFraction), at(toFraction));
    }

    @Override
    public Point2 nearest(Point2 p) {
        double fraction = fraction(p);
        return fraction == 0 ? from : fraction == 1 ? to : at(fraction);
    }

    @Override
    public Point2 heading(double fraction) {
        double length = length();
        return length == 0 ? Point2.ORIGIN : step().times(1 / length);
    }

    @Override
    public Point2 furthest(double x, double y) {
        return to.x() * x + to.y() * y > from.x() * x + from.y() * y ? to : from;
    }

    @Override
    public PlanBox box() {
        return PlanBox.of(from, to);
    }

    @Override
    public Straight reversed() {
        return new Straight(to, from);
    }

    @Override
    public Straight mapped(PlanMap map) {
        return new Straight(map.of(from), map.of(to));
    }

    @Override
    public Moments swept() {
        double twice = from.cross(to);
        return new Moments(twice / 2, twice * (from.x() + to.x()) / 6, twice * (from.y() + to.y()) / 6);
    }

    @Override
    public Kind kind() {
        return Kind.STRAIGHT;
    }
}
