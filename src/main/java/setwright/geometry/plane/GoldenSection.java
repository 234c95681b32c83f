package setwright.geometry.plane;

import java.util.function.DoubleUnaryOperator;

/** Finds the greatest value of a function that only rises and then only falls. */
final class GoldenSection {
    private static final double SHARE = (Math.sqrt(5) - 1) / 2;
    private static final int STEPS = 40;

    private GoldenSection() {}

    /** The place in [low, high] at which the function is greatest, to 5e-9 of the interval. */
    static double greatest(DoubleUnaryOperator function, double low, double high) {
        double a = low;
        double b = high;
        double left = b - SHARE * (b - a);
        double right = a + SHARE * (b - a);
        double atLeft = function.applyAsDouble(left);
        double atRight = function.applyAsDouble(right);
        for (int step = 0; step < STEPS; step++) {
            if (atLeft >= atRight) {
                b = right;
                right = left;
                atRight = atLeft;
                left = b - SHARE * (b - a);
                atLeft = function.applyAsDouble(left);
            } else {
                a = left;
                left = right;
                atLeft = atRight;
                right = a + SHARE * (b - a);
                atRight = function.applyAsDouble(right);
            }
        }
        return (a + b) / 2;
    }
}
