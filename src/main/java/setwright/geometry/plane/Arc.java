package setwright.geometry.plane;

/** A round edge about a centre, less than a full turn; a full circle is two half turns. */
public record Arc(Point2 from, Point2 to, Point2 centre, boolean anticlockwise) implements Edge {
    private static final double ROUND = 1e-7;

    public Arc {
        double near = centre.distance(from);
        if (near == 0 || from.at(to)) {
            throw new IllegalArgumentException(
                    "An arc needs a radius and two different ends; a full circle is two half turns.");
        }
        if (Math.abs(near - centre.distance(to)) > ROUND * Math.max(1, near)) {
            throw new IllegalArgumentException(
                    "The ends of an arc are " + near + " mm and " + centre.distance(to) + " mm from its centre.");
        }
    }

    /** An arc by angles from +x; the sweep is positive anticlockwise, of less than a full turn. */
    public static Arc of(Point2 centre, double radius, double start, double sweep) {
        return new Arc(round(centre, radius, start), round(centre, radius, start + sweep), centre, sweep > 0);
    }

    private static Point2 round(Point2 centre, double radius, double angle) {
        return new Point2(centre.x() + radius * StrictMath.cos(angle), centre.y() + radius * StrictMath.sin(angle));
    }

    public double radius() {
        return centre.distance(from);
    }

    /** The angle run through, positive anticlockwise. */
    public double sweep() {
        double left = angle(from.minus(centre), to.minus(centre));
        return anticlockwise ? left : left - 2 * Math.PI;
    }

    /** The angle from one direction anticlockwise to another, in [0, 2π). */
    private static double angle(Point2 a, Point2 b) {
        double angle = StrictMath.atan2(a.cross(b), a.dot(b));
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    /** True where the direction from the centre meets the arc. */
    boolean faces(double vx, double vy) {
        Point2 first = anticlockwise ? from : to;
        Point2 last = anticlockwise ? to : from;
        double ax = first.x() - centre.x();
        double ay = first.y() - centre.y();
        double bx = last.x() - centre.x();
        double by = last.y() - centre.y();
        boolean afterFirst = ax * vy - ay * vx >= 0;
        boolean beforeLast = vx * by - vy * bx >= 0;
        return ax * by - ay * bx >= 0 ? afterFirst && beforeLast : afterFirst || beforeLast;
    }

    @Override
    public double length() {
        return radius() * Math.abs(sweep());
    }

    @Override
    public Point2 at(double fraction) {
        if (fraction == 0 || fraction == 1) {
            return fraction == 0 ? from : to;
        }
        double turn = fraction * sweep();
        Point2 arm = from.minus(centre);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        return new Point2(centre.x() + arm.x() * cos - arm.y() * sin, centre.y() + arm.x() * sin + arm.y() * cos);
    }

    @Override
    public double fraction(Point2 on) {
        Point2 here = on.minus(centre);
        Point2 start = from.minus(centre);
        double turn = anticlockwise ? angle(start, here) : angle(here, start);
        double whole = Math.abs(sweep());
        // Beyond the end the nearer end counts.
        return turn <= whole ? turn / whole : turn - whole < 2 * Math.PI - turn ? 1 : 0;
    }

    @Override
    public Edge part(double fromFraction, double toFraction) {
        Point2 start = at(fromFraction);
        Point2 end = at(toFraction);
        return start.at(end) ? Straight.point(start) : new Arc(start, end, centre, anticlockwise);
    }

    @Override
    public Point2 nearest(Point2 p) {
        double vx = p.x() - centre.x();
        double vy = p.y() - centre.y();
        double squared = vx * vx + vy * vy;
        if (squared == 0) {
            return from;
        }
        if (faces(vx, vy)) {
            double factor = radius() / Math.sqrt(squared);
            return new Point2(centre.x() + factor * vx, centre.y() + factor * vy);
        }
        return p.distance(from) <= p.distance(to) ? from : to;
    }

    @Override
    public Point2 heading(double fraction) {
        Point2 arm = at(fraction).minus(centre).times((anticlockwise ? 1 : -1) / radius());
        return new Point2(-arm.y(), arm.x());
    }

    @Override
    public Point2 furthest(double x, double y) {
        double length = Math.sqrt(x * x + y * y);
        if (length > 0 && faces(x, y)) {
            double factor = radius() / length;
            return new Point2(centre.x() + factor * x, centre.y() + factor * y);
        }
        return to.x() * x + to.y() * y > from.x() * x + from.y() * y ? to : from;
    }

    @Override
    public PlanBox box() {
        PlanBox box = PlanBox.of(from, to);
        double r = radius();
        double xLow = faces(-1, 0) ? centre.x() - r : box.xLow();
        double yLow = faces(0, -1) ? centre.y() - r : box.yLow();
        double xHigh = faces(1, 0) ? centre.x() + r : box.xHigh();
        double yHigh = faces(0, 1) ? centre.y() + r : box.yHigh();
        return new PlanBox(xLow, yLow, xHigh, yHigh);
    }

    @Override
    public Arc reversed() {
        return new Arc(to, from, centre, !anticlockwise);
    }

    @Override
    public Arc mapped(PlanMap map) {
        return new Arc(map.of(from), map.of(to), map.of(centre), anticlockwise != map.turnsOver());
    }

    /** The triangle from the origin to the chord, and the circular segment on it: r²(θ - sin θ)/2. */
    @Override
    public Moments swept() {
        double r = radius();
        double sweep = sweep();
        double segment = r * r * (sweep - StrictMath.sin(sweep)) / 2;
        double half = StrictMath.sin(sweep / 2);
        double arm = 2.0 / 3 * r * r * half * half * half;
        Point2 middle = at(0.5).minus(centre);
        Moments onChord =
                new Moments(segment, segment * centre.x() + arm * middle.x(), segment * centre.y() + arm * middle.y());
        return new Straight(from, to).swept().plus(onChord);
    }

    @Override
    public Kind kind() {
        return Kind.ARC;
    }
}
