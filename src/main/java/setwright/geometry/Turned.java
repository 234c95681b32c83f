package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/**
 * A cylinder or cone about an axis that lies or is tilted. Distances are exact at any attitude; so is the plan of a lying
 * cylinder. The plan of a lying cone and of what is tilted is that of a body with {@link #SIDES} sides: one that holds it
 * for its shadow, one within it for its core.
 *
 * @param radiusFrom at the end {@code from}
 * @param radiusTo at the end {@code to}
 */
public record Turned(Point3 from, Point3 to, double radiusFrom, double radiusTo) implements Single, Convex {
    private static final int SIDES = 32;
    private static final double LEVEL = 1e-9;

    /** In how many bands over its height the stock shows what a lying one takes away. */
    private static final int BANDS = 12;

    public Turned {
        if (!(radiusFrom >= 0 && radiusTo >= 0) || !Double.isFinite(radiusFrom + radiusTo)) {
            throw new IllegalArgumentException(
                    "A turned body needs radii of nought or more, not " + radiusFrom + " and " + radiusTo + ".");
        }
        if (from.distance(to) == 0) {
            throw new IllegalArgumentException("The axis of a turned body needs two different ends.");
        }
    }

    public static Turned cylinder(Point3 from, Point3 to, double radius) {
        return new Turned(from, to, radius, radius);
    }

    /** The same; where its axis stands upright as an upright cylinder or cone. */
    static Single of(Point3 from, Point3 to, double radiusFrom, double radiusTo) {
        if (from.x() != to.x() || from.y() != to.y()) {
            return new Turned(from, to, radiusFrom, radiusTo);
        }
        boolean up = from.z() <= to.z();
        double low = up ? from.z() : to.z();
        double high = up ? to.z() : from.z();
        return radiusFrom == radiusTo && radiusFrom > 0
                ? new UprightCylinder(from.plan(), radiusFrom, low, high)
                : new UprightCone(
                        from.plan(), new Profile(low, high, up ? radiusFrom : radiusTo, up ? radiusTo : radiusFrom));
    }

    private Point3 axis() {
        Point3 step = to.minus(from);
        return step.times(1 / step.length());
    }

    public boolean lies() {
        return Math.abs(to.z() - from.z()) <= LEVEL;
    }

    public double length() {
        return from.distance(to);
    }

    @Override
    public Point3 furthest(Point3 way) {
        Point3 axis = axis();
        double along = way.dot(axis);
        Point3 out = way.minus(axis.times(along));
        double reach = out.length();
        double ahead = from.dot(way) + radiusFrom * reach;
        double behind = to.dot(way) + radiusTo * reach;
        Point3 end = ahead >= behind ? from : to;
        double radius = ahead >= behind ? radiusFrom : radiusTo;
        return reach == 0 ? end : end.plus(out.times(radius / reach));
    }

    @Override
    public Box box() {
        Point3 axis = axis();
        Point3 out = new Point3(aside(axis.x()), aside(axis.y()), aside(axis.z()));
        return around(from, out.times(radiusFrom)).and(around(to, out.times(radiusTo)));
    }

    private static double aside(double along) {
        return Math.sqrt(Math.max(0, 1 - along * along));
    }

    private static Box around(Point3 middle, Point3 half) {
        return Box.of(middle.minus(half), middle.plus(half));
    }

    @Override
    public double zLow() {
        return box().zLow();
    }

    @Override
    public double zHigh() {
        return box().zHigh();
    }

    @Override
    public Region shadow(double low, double high) {
        if (!heights().share(new Heights(low, high))) {
            return Region.NONE;
        }
        if (lies() && isCylinder()) {
            return new LyingPlan(this).at(Math.max(0, Math.max(low - from.z(), from.z() - high)));
        }
        return sided(1 / StrictMath.cos(Math.PI / SIDES)).shadow(low, high);
    }

    @Override
    public Region core(double low, double high) {
        if (!heights().hold(new Heights(low, high))) {
            return Region.NONE;
        }
        return lies()
                ? new LyingPlan(this).at(Math.max(Math.abs(low - from.z()), Math.abs(high - from.z())))
                : sided(1).core(low, high);
    }

    private boolean isCylinder() {
        return radiusFrom == radiusTo;
    }

    /** The body with flat sides whose corners are so many radii from the axis. */
    private Polyhedron sided(double radii) {
        Point3 axis = axis();
        Point3 other = Math.abs(axis.z()) < 0.9 ? new Point3(0, 0, 1) : new Point3(1, 0, 0);
        Point3 u = Simplex.cross(axis, other);
        u = u.times(1 / u.length());
        Point3 v = Simplex.cross(axis, u);
        List<Point3> corners = new ArrayList<>();
        for (int i = 0; i < SIDES; i++) {
            double angle = 2 * Math.PI * i / SIDES;
            Point3 out = u.times(radii * StrictMath.cos(angle)).plus(v.times(radii * StrictMath.sin(angle)));
            corners.add(from.plus(out.times(radiusFrom)));
            corners.add(to.plus(out.times(radiusTo)));
        }
        return new Polyhedron(corners);
    }

    /** Known where it lies; none where it is tilted, so that what is cut so counts as not gone. */
    @Override
    public @Nullable Heights column(Point2 place) {
        if (!lies()) {
            return null;
        }
        Point2 step = to.minus(from).plan();
        Point2 way = place.minus(from.plan());
        double share = way.dot(step) / step.dot(step);
        double radius = radiusFrom + share * (radiusTo - radiusFrom);
        double aside = way.cross(step) / step.length();
        double squared = radius * radius - aside * aside;
        if (share < 0 || share > 1 || squared < 0) {
            return null;
        }
        double half = Math.sqrt(squared);
        return new Heights(from.z() - half, from.z() + half);
    }

    @Override
    public List<Double> kinks() {
        return lies() ? List.of(zLow(), from.z(), zHigh()) : List.of(zLow(), from.z(), to.z(), zHigh());
    }

    /** Steeper near its lowest and highest line, so that each band takes off as little as the next. */
    @Override
    public List<Double> steps() {
        List<Double> steps = new ArrayList<>();
        double middle = (zLow() + zHigh()) / 2;
        double half = (zHigh() - zLow()) / 2;
        for (int i = 0; i <= BANDS; i++) {
            steps.add(i == 0 ? zLow() : i == BANDS ? zHigh() : middle - half * StrictMath.cos(Math.PI * i / BANDS));
        }
        return steps;
    }

    @Override
    public boolean isStraight() {
        return false;
    }

    @Override
    public Bulk bulk() {
        double squares = radiusFrom * radiusFrom + radiusFrom * radiusTo + radiusTo * radiusTo;
        double ahead = radiusFrom * radiusFrom + 2 * radiusFrom * radiusTo + 3 * radiusTo * radiusTo;
        double share = squares == 0 ? 0.5 : ahead / (4 * squares);
        Point3 middle = from.plus(to.minus(from).times(share));
        return new Bulk(Math.PI * length() * squares / 3, middle);
    }

    @Override
    public Single moved(Motion motion) {
        return of(motion.of(from), motion.of(to), radiusFrom, radiusTo);
    }

    @Override
    public boolean staysExact(Motion motion) {
        return true;
    }

    @Override
    public Kind kind() {
        return Kind.TURNED;
    }
}
