package setwright.geometry;

import setwright.geometry.plane.PlanMap;

/**
 * A motion of a rigid body to any attitude: what was the axes becomes {@code x}, {@code y} and {@code z}, square to each
 * other and right-handed, and the origin goes to {@code shift}.
 */
public record Motion(Point3 x, Point3 y, Point3 z, Point3 shift) {
    private static final double ROUNDING = 1e-12;
    private static final Point3 ALONG_X = new Point3(1, 0, 0);
    private static final Point3 ALONG_Y = new Point3(0, 1, 0);
    private static final Point3 ALONG_Z = new Point3(0, 0, 1);

    /** Nothing moved. */
    public static final Motion NONE = shift(Point3.ORIGIN);

    public Motion {
        x = snapped(x);
        y = snapped(y);
        z = snapped(z);
    }

    /** A direction along an axis but for rounding is made so, that what was upright comes back upright. */
    private static Point3 snapped(Point3 way) {
        return new Point3(snapped(way.x()), snapped(way.y()), snapped(way.z()));
    }

    private static double snapped(double part) {
        double whole = Math.rint(part);
        return Math.abs(part - whole) < ROUNDING ? whole : part;
    }

    public static Motion of(Placement placement) {
        Attitude attitude = placement.attitude();
        return new Motion(
                attitude.toTable(ALONG_X), attitude.toTable(ALONG_Y), attitude.toTable(ALONG_Z), placement.origin());
    }

    public static Motion shift(Point3 by) {
        return new Motion(ALONG_X, ALONG_Y, ALONG_Z, by);
    }

    /** Turns about an axis along x through a place, anticlockwise as one looks against it. */
    public static Motion aboutX(Point3 place, double radians) {
        double cos = StrictMath.cos(radians);
        double sin = StrictMath.sin(radians);
        return new Motion(ALONG_X, new Point3(0, cos, sin), new Point3(0, -sin, cos), Point3.ORIGIN).about(place);
    }

    /** Turns about an axis along y through a place, anticlockwise as one looks against it. */
    public static Motion aboutY(Point3 place, double radians) {
        double cos = StrictMath.cos(radians);
        double sin = StrictMath.sin(radians);
        return new Motion(new Point3(cos, 0, -sin), ALONG_Y, new Point3(sin, 0, cos), Point3.ORIGIN).about(place);
    }

    /** The same turn with a place that stays. */
    private Motion about(Point3 place) {
        return new Motion(x, y, z, place.minus(turned(place)));
    }

    /** True where upright axes stay upright. */
    public boolean staysUpright() {
        return Math.abs(z.z()) == 1;
    }

    boolean turnsOver() {
        return z.z() < 0;
    }

    /** Heights after the motion; only where upright axes stay upright. */
    Heights upright(Heights heights) {
        return turnsOver()
                ? new Heights(shift.z() - heights.high(), shift.z() - heights.low())
                : new Heights(shift.z() + heights.low(), shift.z() + heights.high());
    }

    /** The motion of the plan; only where upright axes stay upright. */
    PlanMap plan() {
        return new PlanMap(x.x(), y.x(), x.y(), y.y(), shift.x(), shift.y());
    }

    /** True where every axis becomes an axis, so that a box stays a box. */
    boolean isSquare() {
        return isAxis(x) && isAxis(y) && isAxis(z);
    }

    private static boolean isAxis(Point3 way) {
        return Math.abs(way.x()) + Math.abs(way.y()) + Math.abs(way.z()) == 1;
    }

    /** A box after the motion; only where it {@link #isSquare is square}. */
    Box of(Box box) {
        return box.isEmpty() ? box : Box.of(of(box.low()), of(box.high()));
    }

    /** A place after the motion. */
    public Point3 of(Point3 place) {
        return turned(place).plus(shift);
    }

    /** A step after the motion. */
    public Point3 turned(Point3 step) {
        return x.times(step.x()).plus(y.times(step.y())).plus(z.times(step.z()));
    }

    /** This motion, then {@code next}. */
    public Motion then(Motion next) {
        return new Motion(next.turned(x), next.turned(y), next.turned(z), next.of(shift));
    }

    public Motion inverse() {
        Motion back = new Motion(
                new Point3(x.x(), y.x(), z.x()),
                new Point3(x.y(), y.y(), z.y()),
                new Point3(x.z(), y.z(), z.z()),
                Point3.ORIGIN);
        return new Motion(back.x, back.y, back.z, back.turned(shift).times(-1));
    }
}
