package setwright.location;

import setwright.quantity.Quantity;
import setwright.quantity.Source;

/**
 * One source of error between a datum and a feature; millimetres.
 *
 * @param amount the half-width of a spread (± amount), or the size of a bias
 * @param halvedBy what would make it half as large, in words that follow "by"; empty where nothing simple does
 */
public record Contributor(String name, Kind kind, Along along, double amount, Source source, String halvedBy) {
    public enum Kind {
        /** Anywhere within ± the amount. */
        SPREAD,
        /** Known to be there, such as backlash that is not taken up or a shim left out: it always adds. */
        BIAS
    }

    /** In which direction it puts the feature out. */
    public enum Along {
        /** Along each axis by itself, X and Y alike: edge, dial, screw. */
        EACH_AXIS,
        /** In one direction, which is not known: a drill's start and drift. */
        ONE_DIRECTION
    }

    public Contributor {
        Quantity.requireFinite(name, amount);
        if (amount < 0) {
            throw new IllegalArgumentException(name + ": an error is given as nought or more, not " + amount + ".");
        }
    }

    public static Contributor eachAxis(String name, double halfWidth, Source source) {
        return new Contributor(name, Kind.SPREAD, Along.EACH_AXIS, halfWidth, source, "");
    }

    public static Contributor oneDirection(String name, double halfWidth, Source source) {
        return new Contributor(name, Kind.SPREAD, Along.ONE_DIRECTION, halfWidth, source, "");
    }

    public static Contributor bias(String name, double amount, Source source) {
        return new Contributor(name, Kind.BIAS, Along.EACH_AXIS, amount, source, "");
    }

    /** The same, saying what would halve it. */
    public Contributor halvedBy(String way) {
        return new Contributor(name, kind, along, amount, source, way);
    }

    /** The same of another size. */
    public Contributor of(double other) {
        return new Contributor(name, kind, along, other, source, halvedBy);
    }

    /** The same as it shows in the distance from the true place: √2 of an error that both axes have. */
    Contributor radial() {
        return switch (along) {
            case EACH_AXIS -> of(amount * ErrorBudget.ROOT_TWO);
            case ONE_DIRECTION -> this;
        };
    }
}
