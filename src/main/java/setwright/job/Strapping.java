package setwright.job;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/**
 * A clamp with its stud: a strap with its heel, a clamp against an edge of the part, or a bolt through one of the part's own
 * holes. It presses at a place of the part as it lies on the table: u to the right from the part's left end, v to the
 * column from its front; a strap runs from the pad to the heel, an edge clamp from the part's edge to its bolt.
 *
 * @param by what presses
 * @param strap id of the row of the strap or edge clamp; {@link ViseHolding#NONE} for a bolt
 * @param stud id of the stud's row
 * @param washer id of the row of the washer under the nut; {@link ViseHolding#NONE} for a plain one
 * @param pad what lies between the clamp and the work
 * @param u place of the pad, or of the hole that a bolt goes through
 * @param v place of the pad
 * @param toward direction from pad to heel: 0 to the right, 90 degrees to the column
 * @param padToStud middle of the pad to the stud
 * @param studToHeel stud to the heel
 * @param heelOver heel higher than the pad (below nought: lower)
 * @param torque at the nut
 */
public record Strapping(
        String id,
        Plannable<By> by,
        Plannable<String> strap,
        Plannable<String> stud,
        Plannable<String> washer,
        Plannable<Pad> pad,
        Plannable<Typed<Length>> u,
        Plannable<Typed<Length>> v,
        Plannable<Typed<Angle>> toward,
        Plannable<Typed<Length>> padToStud,
        Plannable<Typed<Length>> studToHeel,
        Plannable<Typed<Length>> heelOver,
        Plannable<Typed<Torque>> torque) {

    /** What presses on the part. */
    public enum By {
        STRAP,
        /** Sideways against an edge, and a little down. */
        EDGE_CLAMP,
        /** Stud and nut through one of the part's own holes. */
        BOLT
    }

    /** What lies between the clamp and the work. */
    public enum Pad {
        BARE,
        PAPER,
        BRASS
    }

    public static Strapping pencilled(String id) {
        return new Strapping(
                id,
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled());
    }
}
