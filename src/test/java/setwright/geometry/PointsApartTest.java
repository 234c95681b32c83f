package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Point2;

/**
 * The exact clearance in random set-ups against points 1 mm apart all over every body and every section of the tool,
 * carried along the path in steps of at most 1 mm. Bodies stand at any attitude; moves are level, upright, slanted and round.
 */
class PointsApartTest {
    /** Half a step of the path, and half the diagonal between points on either skin. */
    private static final double BETWEEN_POINTS = 1.8;

    private static final List<Section> SECTIONS = List.of(
            new Section("point", Role.CUTTER, new Profile(0, 2, 0, 3)),
            new Section("cutter", Role.CUTTER, Profile.cylinder(2, 14, 3)),
            new Section("nut", Role.HOLDER, new Profile(16, 22, 5, 8)));

    @Test
    void where_they_clear_it_agrees_with_the_points_and_where_points_touch_it_names_the_same_pair() {
        Rounds.each(71, (random, round) -> {
            List<PointsOf> shapes = List.of(PointsOf.random(random), PointsOf.random(random), PointsOf.random(random));
            ToolPath path = path(random);
            List<Body> bodies = new ArrayList<>();
            for (int i = 0; i < shapes.size(); i++) {
                bodies.add(new Body("body " + i, Role.STOP, shapes.get(i).solid()));
            }

            List<Nearest> found = Clearance.all(new ToolStack(SECTIONS), path, bodies);

            for (Section section : SECTIONS) {
                for (int i = 0; i < shapes.size(); i++) {
                    Body body = bodies.get(i);
                    Optional<Nearest> pair = found.stream()
                            .filter(near -> near.section() == section && near.body() == body)
                            .findFirst();
                    double exact = pair.map(Nearest::clearance).orElse(Clearance.REACH);
                    double points = points(shapes.get(i), section, path);
                    String both = section.name() + " and " + body;

                    assertThat(exact).as(both).isLessThanOrEqualTo(points + 1e-6);
                    if (exact > 0) {
                        assertThat(exact).as(both).isGreaterThanOrEqualTo(points - BETWEEN_POINTS);
                    } else {
                        assertThat(points).as(both).isLessThanOrEqualTo(BETWEEN_POINTS);
                    }
                    if (exact < -BETWEEN_POINTS) {
                        assertThat(points).as(both).isZero();
                    }
                }
            }
        });
    }

    /** The least distance of any two points; nought where a point of one lies within the other. */
    private static double points(PointsOf shape, Section section, ToolPath path) {
        List<double[]> tool = PointsOf.skin(section.profile());
        double least = Clearance.REACH;
        for (Move move : path.moves()) {
            int steps = (int) Math.ceil(move.length()) + 1;
            for (int i = 0; i <= steps; i++) {
                least = points(shape, section.profile(), tool, move.at((double) i / steps), least);
                if (least == 0) {
                    return 0;
                }
            }
        }
        return least;
    }

    private static double points(PointsOf shape, Profile profile, List<double[]> tool, Point3 tip, double least) {
        Box box = shape.solid().box();
        double best = least;
        for (double[] p : tool) {
            double x = p[0] + tip.x();
            double y = p[1] + tip.y();
            double z = p[2] + tip.z();
            if (shape.within().holds(x, y, z)) {
                return 0;
            }
            if (fromBox(box, x, y, z) < best) {
                for (double[] q : shape.skin()) {
                    double squared = (q[0] - x) * (q[0] - x) + (q[1] - y) * (q[1] - y) + (q[2] - z) * (q[2] - z);
                    if (squared < best * best) {
                        best = Math.sqrt(squared);
                    }
                }
            }
        }
        for (double[] q : shape.skin()) {
            double z = q[2] - tip.z() - profile.zLow();
            double radius = profile.radiusLow() + (profile.radiusHigh() - profile.radiusLow()) * z / profile.height();
            if (z > 0 && z < profile.height() && Math.hypot(q[0] - tip.x(), q[1] - tip.y()) < radius) {
                return 0;
            }
        }
        return best;
    }

    private static double fromBox(Box box, double x, double y, double z) {
        double dx = Math.max(0, Math.max(box.low().x() - x, x - box.high().x()));
        double dy = Math.max(0, Math.max(box.low().y() - y, y - box.high().y()));
        double dz = Math.max(0, Math.max(box.low().z() - z, z - box.high().z()));
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
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
        Point2 centre = from.plan().plus(new Point2(20 * random.nextDouble() - 10, 1 + 20 * random.nextDouble()));
        double start = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
        double sweep = (0.2 + 5 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
        Arc arc = Arc.of(centre, centre.distance(from.plan()), start, sweep);
        double to = random.nextBoolean() ? from.z() : 40 * random.nextDouble();
        return new Move(Move.Kind.CUT, new Arc(from.plan(), arc.to(), centre, sweep > 0), from.z(), to);
    }

    private static Point3 place(RandomGenerator random) {
        return new Point3(60 * random.nextDouble() - 30, 60 * random.nextDouble() - 30, 40 * random.nextDouble());
    }
}
