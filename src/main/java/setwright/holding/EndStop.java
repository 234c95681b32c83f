package setwright.holding;

import setwright.holding.balance.Contact;
import setwright.holding.balance.Vector;

/**
 * A stop that one end of the part stands against.
 *
 * @param end which end of the part it touches
 * @param y from the front of the part, mm
 * @param z from its bottom, mm
 */
public record EndStop(End end, double y, double z, Friction friction) {
    /** Left or right as one looks at the machine. */
    public enum End {
        LEFT,
        RIGHT
    }

    Contact contact(Held part, Outlook outlook) {
        double rubs = ViseGrip.PASSIVE_SHARE * friction.at(outlook);
        return switch (end) {
            case LEFT -> Contact.reacting("end stop", new Vector(0, y, z), Vector.RIGHT, rubs);
            case RIGHT -> Contact.reacting("end stop", new Vector(part.length(), y, z), Vector.RIGHT.times(-1), rubs);
        };
    }
}
