package setwright.quantity;

/** A number in a working: given from somewhere, or worked out by a rule. */
public sealed interface Value permits Given, Worked {
    /** In the trade's words, for instance {@code feed per tooth}. */
    String name();

    /** The number in the unit that the program computes in. */
    double inside();

    /** The unit in which it is printed. */
    Unit unit();

    /** The number as printed in {@link #unit()}. */
    default double printed() {
        return unit().fromInside(inside());
    }
}
