package setwright.quantity;

/** A number with its dimension; NaN and infinities are refused when it is made. */
public sealed interface Quantity
        permits Length,
                Angle,
                Time,
                Force,
                Torque,
                Power,
                Stress,
                SpindleSpeed,
                Speed,
                Mass,
                Density,
                Stiffness,
                Frequency,
                Ratio {

    Dimension dimension();

    /** The number in the unit that the program computes in, see {@link Dimension#inside()}. */
    double inside();

    /** @throws IllegalArgumentException where the number is NaN or infinite */
    static void requireFinite(String what, double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A " + what + " has to be a finite number, not " + number + ".");
        }
    }
}
