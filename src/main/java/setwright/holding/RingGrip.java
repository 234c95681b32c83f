package setwright.holding;

import java.util.ArrayList;
import java.util.List;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Vector;

/**
 * What holds a round all round: a chuck, a collet, a mandrel in its bore. Jaws at both ends of what is gripped share the
 * whole press freely, so that a push to one side takes from one jaw what it gives to the one across.
 *
 * @param name of what grips
 * @param from middle of the round where the grip begins, mm
 * @param to middle of the round where it ends
 * @param radius of the round
 * @param jaws how many touch it around
 * @param within whether it grips from inside, in a bore
 */
public record RingGrip(String name, Vector from, Vector to, double radius, int jaws, boolean within) {
    public RingGrip {
        if (!(radius > 0) || jaws < 2) {
            throw new IllegalArgumentException(name + " grips a round of " + 2 * radius + " mm with " + jaws
                    + " jaws; a round has a diameter, and two jaws or more hold it.");
        }
    }

    /** A collet or mandrel touches all round; this many places stand for it. */
    public static final int ALL_ROUND = 8;

    /** The steps of the jaws that the end of the round sits on; they only react. */
    public List<Contact> seated(double friction) {
        Vector axis = to.minus(from).unit();
        Vector side = across(axis);
        Vector other = axis.cross(side);
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < jaws; i++) {
            double angle = 2 * Math.PI * i / jaws;
            Vector out = side.times(StrictMath.cos(angle)).plus(other.times(StrictMath.sin(angle)));
            contacts.add(Contact.reacting(name + ", step " + (i + 1), from.plus(out.times(radius)), axis, friction));
        }
        return contacts;
    }

    private static Vector across(Vector axis) {
        return axis.cross(Math.abs(axis.z()) > 0.5 ? Vector.RIGHT : Vector.UP).unit();
    }

    /**
     * @param press of all together, N
     * @param friction of each
     */
    public List<Contact> contacts(double press, double friction) {
        Vector axis = to.minus(from).unit();
        Vector side =
                axis.cross(Math.abs(axis.z()) > 0.5 ? Vector.RIGHT : Vector.UP).unit();
        Vector other = axis.cross(side);
        List<Contact> contacts = new ArrayList<>();
        for (Vector middle : List.of(from, to)) {
            for (int i = 0; i < jaws; i++) {
                double angle = 2 * Math.PI * i / jaws;
                Vector out = side.times(StrictMath.cos(angle)).plus(other.times(StrictMath.sin(angle)));
                contacts.add(Contact.reacting(
                                name + ", jaw " + (i + 1),
                                middle.plus(out.times(radius)),
                                within ? out : out.times(-1),
                                friction)
                        .pressing(press / (2 * jaws), name));
            }
        }
        return contacts;
    }
}
