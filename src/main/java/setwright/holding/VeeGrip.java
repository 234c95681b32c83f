package setwright.holding;

import java.util.ArrayList;
import java.util.List;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;

/**
 * A round between a solid jaw with a vee and a plain moving jaw: two lines in the vee react, the one across presses. It
 * lies in the level vee, along the jaws, or stands in the upright one; mm from the corner of the box around it.
 *
 * @param length of the round
 * @param gripped of a standing one: height in the jaws from its lower end
 * @param angle included angle of the vee, rad
 * @param asked what the moving jaw is expected to press with, N
 */
public record VeeGrip(
        double diameter,
        double length,
        boolean standing,
        double gripped,
        double angle,
        double asked,
        Friction friction) {
    public Grip grip(Outlook outlook, Load ownWeight) {
        List<Contact> contacts = new ArrayList<>();
        double rubs = friction.at(outlook);
        double slant = (Math.PI - angle) / 2;
        for (boolean far : List.of(false, true)) {
            String end = standing ? far ? ", top" : ", bottom" : far ? ", right" : ", left";
            for (int side : List.of(-1, 1)) {
                Vector into = into(-StrictMath.cos(slant), side * StrictMath.sin(slant));
                String flank =
                        standing ? side < 0 ? "right flank" : "left flank" : side < 0 ? "upper flank" : "lower flank";
                contacts.add(Contact.reacting(flank + end, at(into, far), into, rubs));
            }
            Vector across = Vector.AWAY;
            contacts.add(Contact.reacting("moving jaw" + end, at(across, far), across, rubs)
                    .pressing(asked * GripAsked.share(outlook) / 2, "moving jaw"));
        }
        if (standing) {
            Vector foot = new Vector(diameter / 2, diameter / 2, 0);
            contacts.add(Contact.reacting("vise bed", foot, Vector.UP, ViseGrip.PASSIVE_SHARE * rubs));
        }
        return new Grip(contacts, ownWeight);
    }

    /** A direction square to the axis: away from the moving jaw, and sideways (up where it lies, to the right where it stands). */
    private Vector into(double away, double beside) {
        return standing ? new Vector(beside, away, 0) : new Vector(0, away, beside);
    }

    /** Where a line touches that pushes that way, at one of its ends. */
    private Vector at(Vector into, boolean far) {
        double radius = diameter / 2;
        Vector axis =
                standing ? new Vector(radius, radius, far ? gripped : 0) : new Vector(far ? length : 0, radius, radius);
        return axis.minus(into.times(radius));
    }
}
