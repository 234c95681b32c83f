package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/**
 * The exact clearance against points sampled all over the tool along its path, whose distance from the body is written
 * down here once more by the formula of its shape. No sample may be nearer than the exact clearance, and where the two
 * clear the nearest sample may be further away only by what lies between samples.
 */
class SampledClearanceTest {
    private static final double BETWEEN_SAMPLES = 1.2;

    /** A body twice: as the solid under test, and by the distance of a place from it, negative inside. */
    private record Shape(Solid solid, Distance distance) {
        interface Distance {
            double of(double x, double y, double z);
        }
    }

    @Test
    void no_sampled_place_of_the_tool_is_nearer_than_the_exact_clearance() {
        Rounds.each(51, (random, round) -> {
            Shape shape = shape(random);
            Section section = section(random);
            ToolPath path = path(random);

            double exact = Clearance.nearest(
                            ToolStack.of(section), path, List.of(new Body("body", Role.STOP, shape.solid())))
                    .map(Nearest::clearance)
                    .orElse(Clearance.REACH);
            double sampled = sampled(shape, section, path);

            assertThat(exact).isLessThanOrEqualTo(sampled + 1e-9);
            // Where a thin edge passes between samples only that is known that it touches.
            assertThat(Math.max(0, exact)).isGreaterThanOrEqualTo(sampled - BETWEEN_SAMPLES);
        });
    }

    @Test
    void the_place_named_is_on_the_body_and_as_far_from_the_tool_there_as_said() {
        Rounds.each(52, (random, round) -> {
            Shape shape = shape(random);
            Section section = section(random);
            ToolPath path = path(random);
            Body body = new Body("body", Role.STOP, shape.solid());

            Nearest near = Clearance.nearest(ToolStack.of(section), path, List.of(body))
                    .orElseThrow();

            Point3 at = near.place().at();
            Point3 tip = near.place().toolPoint();
            assertThat(shape.distance().of(at.x(), at.y(), at.z())).isLessThanOrEqualTo(1e-6);
            if (near.clearance() > 0) {
                double fromTool = fromTurned(section.profile().lifted(tip.z()), tip.plan(), at);
                assertThat(fromTool).isBetween(near.clearance() - 1e-6, near.clearance() + 2 * Search.STEP);
                assertThat(near.place().toward().length()).isBetween(1 - 1e-9, 1 + 1e-9);
                double ahead = Math.min(0.5, near.clearance() / 2);
                Point3 nearer = tip.plus(near.place().toward().times(ahead));
                assertThat(fromTurned(section.profile().lifted(nearer.z()), nearer.plan(), at))
                        .isLessThan(fromTool - ahead / 2);
            }
        });
    }

    private static double sampled(Shape shape, Section section, ToolPath path) {
        double least = Double.POSITIVE_INFINITY;
        for (Move move : path.moves()) {
            int steps = (int) Math.ceil(move.length() / 0.5) + 1;
            for (int i = 0; i <= steps; i++) {
                least = Math.min(least, sampled(shape, section.profile(), move.at((double) i / steps)));
            }
        }
        return least;
    }

    private static double sampled(Shape shape, Profile profile, Point3 tip) {
        double least = Double.POSITIVE_INFINITY;
        int levels = (int) Math.ceil(profile.height()) + 1;
        for (int i = 0; i <= levels; i++) {
            double share = (double) i / levels;
            double radius = profile.radiusLow() + share * (profile.radiusHigh() - profile.radiusLow());
            double z = tip.z() + profile.zLow() + share * profile.height();
            int rings = (int) Math.ceil(radius);
            for (int ring = 0; ring <= rings; ring++) {
                double r = rings == 0 ? 0 : radius * ring / rings;
                int places = 1 + (int) Math.ceil(2 * Math.PI * r);
                for (int k = 0; k < places; k++) {
                    double angle = 2 * Math.PI * k / places;
                    double x = tip.x() + r * Math.cos(angle);
                    double y = tip.y() + r * Math.sin(angle);
                    least = Math.min(least, shape.distance().of(x, y, z));
                }
            }
        }
        return least;
    }

    private static Section section(RandomGenerator random) {
        double low = random.nextInt(2) * 10 * random.nextDouble();
        double radius = 0.5 + 7 * random.nextDouble();
        double other = random.nextBoolean() ? radius : 8 * random.nextDouble() * random.nextInt(2);
        return new Section("section", Role.CUTTER, new Profile(low, low + 1 + 14 * random.nextDouble(), radius, other));
    }

    private static ToolPath path(RandomGenerator random) {
        ToolPath path = ToolPath.from(place(random));
        for (int i = 0; i < 3; i++) {
            path = switch (random.nextInt(4)) {
                case 0 -> path.toHeight(Move.Kind.PLUNGE, 40 * random.nextDouble());
                case 1 -> path.to(Move.Kind.APPROACH, place(random));
                case 2 -> path.then(round(path.end(), random));
                default -> path.across(Move.Kind.CUT, place(random).plan());
            };
        }
        return path;
    }

    private static Move round(Point3 from, RandomGenerator random) {
        Point2 centre = place(random).plan();
        double start = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
        double sweep = (0.2 + 5 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
        Arc arc = Arc.of(centre, centre.distance(from.plan()), start, sweep);
        double to = random.nextBoolean() ? from.z() : 40 * random.nextDouble();
        return new Move(Move.Kind.CUT, new Arc(from.plan(), arc.to(), centre, sweep > 0), from.z(), to);
    }

    private static Point3 place(RandomGenerator random) {
        return new Point3(80 * random.nextDouble() - 40, 80 * random.nextDouble() - 40, 40 * random.nextDouble());
    }

    private static Shape shape(RandomGenerator random) {
        double x = 30 * random.nextDouble() - 15;
        double y = 30 * random.nextDouble() - 15;
        double low = 20 * random.nextDouble();
        double high = low + 20 * random.nextDouble();
        double size = 2 + 10 * random.nextDouble();
        Point2 middle = new Point2(x, y);
        return switch (random.nextInt(5)) {
            case 0 -> block(middle, size, low, high);
            case 1 -> cylinder(middle, size, low, high);
            case 2 -> cone(middle, new Profile(low, high + 1, size, size * random.nextDouble()));
            case 3 -> rounded(middle, new Point2(y, x), size, new Profile(low, high, 0, 0));
            default -> drilled(middle, size, low, high);
        };
    }

    private static Shape block(Point2 m, double half, double low, double high) {
        Point2 corner = new Point2(half, half / 2);
        return new Shape(
                Prism.box(m.minus(corner), m.plus(corner), low, high),
                (x, y, z) -> upright(box(x - m.x(), y - m.y(), half, half / 2), z, low, high));
    }

    private static Shape cylinder(Point2 m, double radius, double low, double high) {
        return new Shape(
                new UprightCylinder(m, radius, low, high),
                (x, y, z) -> upright(Math.hypot(x - m.x(), y - m.y()) - radius, z, low, high));
    }

    private static Shape cone(Point2 m, Profile profile) {
        return new Shape(new UprightCone(m, profile), (x, y, z) -> fromTurned(profile, m, new Point3(x, y, z)));
    }

    private static Shape rounded(Point2 a, Point2 b, double radius, Profile heights) {
        return new Shape(
                new Prism(Region.of(Outline.slot(a, b, radius)), heights.zLow(), heights.zHigh()),
                (x, y, z) -> upright(fromLine(a, b, new Point2(x, y)) - radius, z, heights.zLow(), heights.zHigh()));
    }

    /** A square plate of 60 with a hole. */
    private static Shape drilled(Point2 m, double radius, double low, double high) {
        Region square = Region.rectangle(new Point2(-30, -30), new Point2(30, 30));
        Point2 at = m.times(0.5);
        return new Shape(
                new Prism(square.minus(Region.circle(at, radius)), low, high),
                (x, y, z) -> upright(
                        Math.max(box(x, y, 30, 30), radius - Math.hypot(x - at.x(), y - at.y())), z, low, high));
    }

    private static double box(double x, double y, double halfX, double halfY) {
        double dx = Math.abs(x) - halfX;
        double dy = Math.abs(y) - halfY;
        return Math.hypot(Math.max(0, dx), Math.max(0, dy)) + Math.min(0, Math.max(dx, dy));
    }

    private static double upright(double aside, double z, double low, double high) {
        double height = Math.max(low - z, z - high);
        return Math.hypot(Math.max(0, aside), Math.max(0, height)) + Math.min(0, Math.max(aside, height));
    }

    private static double fromLine(Point2 a, Point2 b, Point2 p) {
        Point2 along = b.minus(a);
        double share = Math.max(0, Math.min(1, p.minus(a).dot(along) / along.dot(along)));
        return p.distance(a.plus(along.times(share)));
    }

    /** The distance from a turned body by its three edges in the plane of the axis; negative inside. */
    private static double fromTurned(Profile profile, Point2 axis, Point3 p) {
        Point2 here = new Point2(p.plan().distance(axis), p.z());
        Point2 lowAxis = new Point2(0, profile.zLow());
        Point2 low = new Point2(profile.radiusLow(), profile.zLow());
        Point2 high = new Point2(profile.radiusHigh(), profile.zHigh());
        Point2 highAxis = new Point2(0, profile.zHigh());
        double nearest = Double.POSITIVE_INFINITY;
        List<Point2> corners = new ArrayList<>(List.of(lowAxis, low, high, highAxis));
        for (int i = 1; i < corners.size(); i++) {
            if (corners.get(i).distance(corners.get(i - 1)) > 0) {
                nearest = Math.min(nearest, fromLine(corners.get(i - 1), corners.get(i), here));
            }
        }
        double share = (p.z() - profile.zLow()) / profile.height();
        double radius = profile.radiusLow() + share * (profile.radiusHigh() - profile.radiusLow());
        boolean inside = share >= 0 && share <= 1 && here.x() <= radius;
        return inside ? -nearest : nearest;
    }
}
