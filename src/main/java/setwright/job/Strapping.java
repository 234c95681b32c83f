package setwright.job;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/**
 * A strap with its stud and heel. Its pad presses at a place of the part as it lies on the table: u to the right from the
 * part's left end, v to the column from its front; the strap runs from the pad to the heel.
 *
 * @param strap id of the strap's row
 * @param stud id of the stud's row
 * @param u place of the pad
 * @param v place of the pad
 * @param toward direction from pad to heel: 0 to the right, 90 degrees to the column
 * @param padToStud middle of the pad to the stud
 * @param studToHeel stud to the heel
 * @param heelOver heel higher than the pad (below nought: lower)
 * @param torque at the nut
 */
public record Strapping(
        String id,
        Plannable<String> strap,
        Plannable<String> stud,
        Plannable<Typed<Length>> u,
        Plannable<Typed<Length>> v,
        Plannable<Typed<Angle>> toward,
        Plannable<Typed<Length>> padToStud,
        Plannable<Typed<Length>> studToHeel,
        Plannable<Typed<Length>> heelOver,
        Plannable<Typed<Torque>> torque) {

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
                Plannable.pencilled());
    }
}
