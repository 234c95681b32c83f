package setwright.quantity.fit;

import setwright.quantity.Source;

/**
 * The limits of a tolerance class at a nominal size, as deviations from it in millimetres.
 *
 * @param toleranceClass for instance {@code H7}; capitals are holes, small letters shafts
 */
public record Limits(double nominal, String toleranceClass, double upper, double lower, Source source) {
    public boolean isHole() {
        return Character.isUpperCase(toleranceClass.charAt(0));
    }

    public double tolerance() {
        return upper - lower;
    }

    public double greatest() {
        return nominal + upper;
    }

    public double least() {
        return nominal + lower;
    }

    /** As printed in a drawing note: {@code 12 H7}. */
    public String written() {
        return FitTable.plain(nominal) + " " + toleranceClass;
    }
}
