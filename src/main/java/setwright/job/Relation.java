package setwright.job;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A relation that the drawing asks for between two features.
 *
 * @param of id of the feature that is toleranced
 * @param to id of the feature that it is related to
 * @param within width or diameter of the zone
 */
public record Relation(Kind kind, String of, String to, Typed<Length> within) {
    /** The relations that ISO 1101 knows and a mill can cut. */
    public enum Kind {
        PARALLEL,
        SQUARE,
        COAXIAL,
        IN_LINE,
        POSITION,
        DEPTH,
        ANGULAR
    }
}
