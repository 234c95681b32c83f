package setwright.holding;

import java.util.ArrayList;
import java.util.List;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;

/**
 * A part that clamps press on what it lies on. A pad presses square to its face and is not trusted to hold sideways: a
 * strap can swing about its stud (common practice: count one face). What bears the part reacts, and rubs.
 */
public record StrapGrip(List<Pad> pads, List<Bearing> bearings, Friction friction) {
    /** From the torque at a nut to the force of its stud (from memory: nut factor where nothing is known, Shigley). */
    public static final double NUT_FACTOR = 0.2;

    /** What a bad day leaves of a stud's force (from memory: tightening by torque scatters by 25 to 35 %). */
    public static final double PESSIMISTIC_SHARE = 0.7;

    public StrapGrip {
        pads = List.copyOf(pads);
        bearings = List.copyOf(bearings);
    }

    /**
     * Where a clamp presses.
     *
     * @param into the part, one long
     * @param newtons expected
     */
    public record Pad(String name, Vector at, Vector into, double newtons) {}

    /**
     * Where the part is borne.
     *
     * @param normal into the part
     * @param share of the friction that is counted: all of it straight across from a pad, half elsewhere
     */
    public record Bearing(String name, Vector at, Vector normal, double share) {
        /** Straight across from a pad. */
        public static Bearing across(String name, Vector at, Vector normal) {
            return new Bearing(name, at, normal, 1);
        }

        /** Anywhere else; the balance may choose how much it bears. */
        public static Bearing beside(String name, Vector at, Vector normal) {
            return new Bearing(name, at, normal, ViseGrip.PASSIVE_SHARE);
        }
    }

    public Grip grip(Outlook outlook, Load ownWeight) {
        return new Grip(contacts(outlook), ownWeight);
    }

    private List<Contact> contacts(Outlook outlook) {
        List<Contact> contacts = new ArrayList<>();
        for (Bearing bearing : bearings) {
            double rubs = bearing.share() * friction.at(outlook);
            contacts.add(Contact.reacting(bearing.name(), bearing.at(), bearing.normal(), rubs));
        }
        for (Pad pad : pads) {
            contacts.add(
                    Contact.reacting(pad.name(), pad.at(), pad.into(), 0).pressing(pad.newtons() * share(outlook)));
        }
        return contacts;
    }

    private static double share(Outlook outlook) {
        return switch (outlook) {
            case EXPECTED -> 1;
            case PESSIMISTIC -> PESSIMISTIC_SHARE;
        };
    }
}
