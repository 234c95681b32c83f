package setwright.geometry;

/**
 * The six sides of the blank as drawn. In the part frame x is its length, y its depth, z its height, and the origin is
 * its left front bottom corner. A side's u runs right and v up as one looks at it squarely, both from the side's lower
 * left corner as then seen; u, v and the outward normal are right-handed.
 *
 * <table>
 * <caption>Part directions</caption>
 * <tr><th>side</th><th>outward</th><th>u</th><th>v</th></tr>
 * <tr><td>top</td><td>+z</td><td>+x</td><td>+y</td></tr>
 * <tr><td>bottom</td><td>-z</td><td>+x</td><td>-y</td></tr>
 * <tr><td>front</td><td>-y</td><td>+x</td><td>+z</td></tr>
 * <tr><td>back</td><td>+y</td><td>-x</td><td>+z</td></tr>
 * <tr><td>left</td><td>-x</td><td>-y</td><td>+z</td></tr>
 * <tr><td>right</td><td>+x</td><td>+y</td><td>+z</td></tr>
 * </table>
 *
 * <p>The bottom is looked at after the part was rolled over about its length: left stays left, front goes to the back.
 */
public enum Side {
    TOP(Heading.PLUS_Z, Heading.PLUS_X, Heading.PLUS_Y),
    BOTTOM(Heading.MINUS_Z, Heading.PLUS_X, Heading.MINUS_Y),
    FRONT(Heading.MINUS_Y, Heading.PLUS_X, Heading.PLUS_Z),
    BACK(Heading.PLUS_Y, Heading.MINUS_X, Heading.PLUS_Z),
    LEFT(Heading.MINUS_X, Heading.MINUS_Y, Heading.PLUS_Z),
    RIGHT(Heading.PLUS_X, Heading.PLUS_Y, Heading.PLUS_Z);

    private final Heading outward;
    private final Heading u;
    private final Heading v;

    Side(Heading outward, Heading u, Heading v) {
        this.outward = outward;
        this.u = u;
        this.v = v;
    }

    /** The part direction out of this side. */
    public Heading outward() {
        return outward;
    }

    /** The part direction that runs right as one looks at this side. */
    public Heading u() {
        return u;
    }

    /** The part direction that runs up as one looks at this side. */
    public Heading v() {
        return v;
    }

    public Side opposite() {
        return facing(outward.opposite());
    }

    /** The side whose outward direction in the part frame is {@code outward}. */
    public static Side facing(Heading outward) {
        for (Side side : values()) {
            if (side.outward == outward) {
                return side;
            }
        }
        throw new IllegalStateException("No side faces " + outward + ".");
    }

    /** The part place {@code inFrom.z()} below this side, at u and v {@code inFrom.x(), inFrom.y()}, of a blank. */
    public Point3 place(Point3 inFrom, Point3 blank) {
        return corner(blank).plus(u.step(inFrom.x())).plus(v.step(inFrom.y())).minus(outward.step(inFrom.z()));
    }

    /** How far a part place lies along u, along v and below this side of a blank. */
    public Point3 seen(Point3 part, Point3 blank) {
        Point3 step = part.minus(corner(blank));
        return new Point3(u.of(step), v.of(step), -outward.of(step));
    }

    /** Length along u, along v, and thickness behind this side, of a blank. */
    public Point3 size(Point3 blank) {
        return new Point3(Math.abs(u.of(blank)), Math.abs(v.of(blank)), Math.abs(outward.of(blank)));
    }

    /** The lower left corner of this side as one looks at it, in the part frame. */
    private Point3 corner(Point3 blank) {
        return new Point3(
                start(u.x() + v.x() - outward.x(), blank.x()),
                start(u.y() + v.y() - outward.y(), blank.y()),
                start(u.z() + v.z() - outward.z(), blank.z()));
    }

    /** Where something starts that runs up or down an axis: at nought or at the far end. */
    private static double start(int way, double length) {
        return way > 0 ? 0 : length;
    }
}
