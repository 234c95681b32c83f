package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/**
 * A random body twice: as a solid, and as points at most 1 mm apart all over its skin with the plain inequality of what
 * lies within, both worked in the frame in which it was made and carried over by three directions of their own.
 */
record PointsOf(Solid solid, List<double[]> skin, Within within) {
    /** Tells places within from places outside. */
    interface Within {
        boolean holds(double x, double y, double z);
    }

    /** A frame of its own: three directions square to each other, and a place. */
    private record Frame(double[][] axes, double[] at) {
        static Frame random(RandomGenerator random, boolean upright) {
            double a = 2 * Math.PI * random.nextDouble();
            double b = upright ? 0 : Math.acos(2 * random.nextDouble() - 1);
            double c = 2 * Math.PI * random.nextDouble();
            double[][] turn = times(times(aboutZ(a), aboutY(b)), aboutZ(c));
            double[] at = {40 * random.nextDouble() - 20, 40 * random.nextDouble() - 20, 30 * random.nextDouble() - 5};
            return new Frame(turn, at);
        }

        private static double[][] aboutZ(double a) {
            return new double[][] {{Math.cos(a), -Math.sin(a), 0}, {Math.sin(a), Math.cos(a), 0}, {0, 0, 1}};
        }

        private static double[][] aboutY(double a) {
            return new double[][] {{Math.cos(a), 0, Math.sin(a)}, {0, 1, 0}, {-Math.sin(a), 0, Math.cos(a)}};
        }

        private static double[][] times(double[][] a, double[][] b) {
            double[][] product = new double[3][3];
            for (int i = 0; i < 3; i++) {
                for (int k = 0; k < 3; k++) {
                    product[i][k] = a[i][0] * b[0][k] + a[i][1] * b[1][k] + a[i][2] * b[2][k];
                }
            }
            return product;
        }

        double[] out(double x, double y, double z) {
            double[] place = new double[3];
            for (int i = 0; i < 3; i++) {
                place[i] = axes[i][0] * x + axes[i][1] * y + axes[i][2] * z + at[i];
            }
            return place;
        }

        double in(int axis, double x, double y, double z) {
            return axes[0][axis] * (x - at[0]) + axes[1][axis] * (y - at[1]) + axes[2][axis] * (z - at[2]);
        }

        private Point3 column(int k) {
            return new Point3(axes[0][k], axes[1][k], axes[2][k]);
        }

        Motion motion() {
            return new Motion(column(0), column(1), column(2), new Point3(at[0], at[1], at[2]));
        }
    }

    static PointsOf random(RandomGenerator random) {
        double height = 2 + 25 * random.nextDouble();
        double size = 1 + 7 * random.nextDouble();
        boolean upright = random.nextInt(4) == 0;
        Frame frame = Frame.random(random, upright);
        return switch (random.nextInt(5)) {
            case 0 -> box(frame, size, 1 + 8 * random.nextDouble(), height);
            case 1 -> turned(frame, height, size, size);
            case 2 -> turned(frame, height, size, size * random.nextInt(2) * random.nextDouble());
            case 3 -> angle(Frame.random(random, true), 3 + size, height);
            default -> both(turned(frame, height, size, size), box(frame, size / 2, 6, height / 2));
        };
    }

    private static PointsOf box(Frame frame, double x, double y, double height) {
        List<double[]> skin = new ArrayList<>();
        walls(skin, frame, new double[][] {{-x, -y}, {x, -y}, {x, y}, {-x, y}}, height);
        for (double u : spread(-x, x)) {
            for (double v : spread(-y, y)) {
                skin.add(frame.out(u, v, 0));
                skin.add(frame.out(u, v, height));
            }
        }
        Prism prism = Prism.box(new Point2(-x, -y), new Point2(x, y), 0, height);
        return new PointsOf(
                prism.moved(frame.motion()),
                skin,
                (a, b, c) -> Math.abs(frame.in(0, a, b, c)) < x
                        && Math.abs(frame.in(1, a, b, c)) < y
                        && Math.abs(frame.in(2, a, b, c) - height / 2) < height / 2);
    }

    private static PointsOf turned(Frame frame, double height, double low, double high) {
        List<double[]> skin = new ArrayList<>();
        skin(skin, frame, height, low, high);
        Solid solid = new UprightCone(Point2.ORIGIN, new Profile(0, height, low, high)).moved(frame.motion());
        return new PointsOf(solid, skin, (a, b, c) -> {
            double z = frame.in(2, a, b, c);
            double radius = low + (high - low) * z / height;
            return z > 0 && z < height && Math.hypot(frame.in(0, a, b, c), frame.in(1, a, b, c)) < radius;
        });
    }

    /** Points of a section of the tool, its axis upright over the origin. */
    static List<double[]> skin(Profile profile) {
        List<double[]> skin = new ArrayList<>();
        Frame frame = new Frame(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, new double[] {0, 0, profile.zLow()});
        skin(skin, frame, profile.height(), profile.radiusLow(), profile.radiusHigh());
        return skin;
    }

    private static void skin(List<double[]> skin, Frame frame, double height, double low, double high) {
        double steep = Math.hypot(height, high - low);
        int rings = (int) Math.ceil(steep);
        for (int i = 0; i <= rings; i++) {
            ring(skin, frame, low + (high - low) * i / rings, height * i / rings);
        }
        for (double r : spread(0, low)) {
            ring(skin, frame, r, 0);
        }
        for (double r : spread(0, high)) {
            ring(skin, frame, r, height);
        }
    }

    private static void ring(List<double[]> skin, Frame frame, double radius, double z) {
        int places = Math.max(1, (int) Math.ceil(2 * Math.PI * radius));
        for (int k = 0; k < places; k++) {
            double angle = 2 * Math.PI * k / places;
            skin.add(frame.out(radius * Math.cos(angle), radius * Math.sin(angle), z));
        }
    }

    /** An upright angle section with legs of a width of 3. */
    private static PointsOf angle(Frame frame, double leg, double height) {
        double[][] corners = {{0, 0}, {leg, 0}, {leg, 3}, {3, 3}, {3, leg}, {0, leg}};
        List<double[]> skin = new ArrayList<>();
        walls(skin, frame, corners, height);
        for (double u : spread(0, leg)) {
            for (double v : spread(0, leg)) {
                if (u <= 3 || v <= 3) {
                    skin.add(frame.out(u, v, 0));
                    skin.add(frame.out(u, v, height));
                }
            }
        }
        List<Point2> outline = new ArrayList<>();
        for (double[] corner : corners) {
            double[] out = frame.out(corner[0], corner[1], 0);
            outline.add(new Point2(out[0], out[1]));
        }
        double foot = frame.at()[2];
        Prism prism = new Prism(Region.of(Outline.polygon(outline)), foot, foot + height);
        return new PointsOf(prism, skin, (a, b, c) -> {
            double u = frame.in(0, a, b, c);
            double v = frame.in(1, a, b, c);
            double z = frame.in(2, a, b, c);
            return z > 0 && z < height && u > 0 && v > 0 && u < leg && v < leg && (u < 3 || v < 3);
        });
    }

    private static PointsOf both(PointsOf one, PointsOf other) {
        List<double[]> skin = new ArrayList<>(one.skin);
        skin.addAll(other.skin);
        return new PointsOf(
                Union.of(one.solid, other.solid),
                skin,
                (x, y, z) -> one.within.holds(x, y, z) || other.within.holds(x, y, z));
    }

    private static void walls(List<double[]> skin, Frame frame, double[][] corners, double height) {
        for (int i = 0; i < corners.length; i++) {
            double[] a = corners[i];
            double[] b = corners[(i + 1) % corners.length];
            for (double share : spread(0, Math.hypot(b[0] - a[0], b[1] - a[1]))) {
                double part = share / Math.hypot(b[0] - a[0], b[1] - a[1]);
                for (double z : spread(0, height)) {
                    skin.add(frame.out(a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1]), z));
                }
            }
        }
    }

    /** Both ends, and places at most 1 apart between them. */
    private static double[] spread(double low, double high) {
        int count = Math.max(1, (int) Math.ceil(high - low));
        double[] places = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            places[i] = low + (high - low) * i / count;
        }
        return places;
    }
}
