package setwright.location.layout;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** A triangle: sides a, b, c (mm) and the angles opposite to them (radians). */
public record Triangle(double a, double b, double c, double alpha, double beta, double gamma) {
    public static final Procedure SOLVE = new Procedure(
            "triangle",
            List.of(
                    "three sides: law of cosines",
                    "two sides and the angle between: law of cosines",
                    "a side and two angles: they add up to 180°, law of sines",
                    "two sides and an angle opposite to one: law of sines, which may leave two triangles"),
            Unit.NONE,
            Source.of("computed: laws of sines and cosines"));

    private static final double ABOUT = 1e-12;

    /** What is known: three of six; NaN where it is not. */
    public record Known(double[] sides, double[] angles) {
        public Known {
            sides = sides.clone();
            angles = angles.clone();
        }

        @Override
        public double[] sides() {
            return sides.clone();
        }

        @Override
        public double[] angles() {
            return angles.clone();
        }
    }

    /**
     * Every triangle that has them: one or two.
     *
     * @throws IllegalArgumentException where there is none, or where the shape is known but not the size
     */
    public static List<Triangle> of(Known known) {
        double[] side = known.sides();
        double[] angle = known.angles();
        int sides = count(side);
        if (sides + count(angle) != 3) {
            throw new IllegalArgumentException(
                    "three of a, b, c, A, B, C are wanted, not " + (sides + count(angle)) + ".");
        }
        List<Triangle> found = switch (sides) {
            case 3 -> List.of(ofSides(side));
            case 2 -> ofTwoSides(side, angle);
            case 1 -> List.of(ofOneSide(side, angle));
            default -> throw new IllegalArgumentException("three angles give no size; give one side at least.");
        };
        found = found.stream().filter(Triangle::stands).toList();
        if (found.isEmpty()) {
            throw new IllegalArgumentException("there is no such triangle: the sides do not meet.");
        }
        return found;
    }

    private static int count(double[] values) {
        int known = 0;
        for (double value : values) {
            known += Double.isNaN(value) ? 0 : 1;
        }
        return known;
    }

    private static Triangle ofSides(double[] s) {
        return new Triangle(
                s[0], s[1], s[2], opposite(s[0], s[1], s[2]), opposite(s[1], s[2], s[0]), opposite(s[2], s[0], s[1]));
    }

    private static double opposite(double side, double one, double other) {
        double cosine = (one * one + other * other - side * side) / (2 * one * other);
        return Math.abs(cosine) <= 1 ? StrictMath.acos(cosine) : Double.NaN;
    }

    private static List<Triangle> ofTwoSides(double[] s, double[] angle) {
        int open = missing(s);
        int known = given(angle);
        if (known == open) {
            double one = s[(open + 1) % 3];
            double other = s[(open + 2) % 3];
            s[open] = StrictMath.sqrt(one * one + other * other - 2 * one * other * StrictMath.cos(angle[open]));
            return List.of(ofSides(s));
        }
        int with = 3 - open - known;
        double sine = s[with] * StrictMath.sin(angle[known]) / s[known];
        if (sine > 1 + ABOUT) {
            return List.of();
        }
        double sharp = StrictMath.asin(Math.min(1, sine));
        List<Triangle> found = new ArrayList<>();
        for (double angleWith :
                sharp > Math.PI / 2 - 1e-7 ? new double[] {sharp} : new double[] {sharp, Math.PI - sharp}) {
            double[] angles = new double[3];
            angles[known] = angle[known];
            angles[with] = angleWith;
            angles[open] = Math.PI - angle[known] - angleWith;
            if (angles[open] > ABOUT) {
                found.add(ofAngles(angles, s[known], known));
            }
        }
        return found;
    }

    private static Triangle ofOneSide(double[] s, double[] angle) {
        int open = missing(angle);
        angle[open] = Math.PI - angle[(open + 1) % 3] - angle[(open + 2) % 3];
        return ofAngles(angle, s[given(s)], given(s));
    }

    private static Triangle ofAngles(double[] angle, double side, int at) {
        double round = side / StrictMath.sin(angle[at]);
        return new Triangle(
                at == 0 ? side : round * StrictMath.sin(angle[0]),
                at == 1 ? side : round * StrictMath.sin(angle[1]),
                at == 2 ? side : round * StrictMath.sin(angle[2]),
                angle[0],
                angle[1],
                angle[2]);
    }

    private static int missing(double[] values) {
        return Double.isNaN(values[0]) ? 0 : Double.isNaN(values[1]) ? 1 : 2;
    }

    private static int given(double[] values) {
        return !Double.isNaN(values[0]) ? 0 : !Double.isNaN(values[1]) ? 1 : 2;
    }

    private boolean stands() {
        return Math.min(Math.min(alpha, beta), gamma) > ABOUT && Math.min(Math.min(a, b), c) > 0;
    }
}
