package setwright.holding.balance;

import java.util.List;

/**
 * What holds a part: its contacts, and its own weight, which is there whatever the cut does.
 *
 * @param ownWeight a constant load; {@link Load#NONE} where it is left out
 */
public record Grip(List<Contact> contacts, Load ownWeight) {
    public Grip {
        contacts = List.copyOf(contacts);
        if (contacts.isEmpty()) {
            throw new IllegalArgumentException("A grip needs at least one contact.");
        }
    }

    public static Grip of(List<Contact> contacts) {
        return new Grip(contacts, Load.NONE);
    }

    /** Everything that presses, together, N. */
    public double pressed() {
        double sum = 0;
        for (Contact contact : contacts) {
            Press press = contact.press();
            sum += press == null ? 0 : press.newtons();
        }
        return sum;
    }

    Vector centre() {
        Vector sum = Vector.ZERO;
        for (Contact contact : contacts) {
            sum = sum.plus(contact.at());
        }
        return sum.times(1.0 / contacts.size());
    }

    /** How far the farthest contact lies from the centre of all, at least a millimetre. */
    double halfSpread() {
        Vector centre = centre();
        double far = 1;
        for (Contact contact : contacts) {
            far = Math.max(far, contact.at().minus(centre).length());
        }
        return far;
    }
}
