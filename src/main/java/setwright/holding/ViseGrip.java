package setwright.holding;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.holding.balance.Contact;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;

/**
 * A part in a vise as contacts: the four corners of what each jaw touches, the corners of the packing, an end stop. The
 * moving jaw presses in sum with the grip asked; solid jaw, packing and stop react.
 *
 * @param asked what the moving jaw is expected to press with, N
 * @param moving whether the moving jaw bears flat, or on a round bar along it
 */
public record ViseGrip(
        Held part,
        Jaws jaws,
        double asked,
        @Nullable Packing packing,
        @Nullable EndStop stop,
        Moving moving) {
    /**
     * What of the friction of packing and stops is counted. The balance is free to choose a helpful split of what only
     * reacts, so that its friction is not trusted whole (common practice: 0.5 to 0.7).
     */
    public static final double PASSIVE_SHARE = 0.5;

    public ViseGrip {
        if (!(part.left(jaws) < part.right(jaws))) {
            throw new IllegalArgumentException("The jaws, " + jaws.width() + " mm wide, do not touch a part "
                    + part.length() + " mm long that sits " + part.offset() + " mm off their middle.");
        }
    }

    /** Without packing and stop; asked in N. */
    public static ViseGrip of(Held part, Jaws jaws, double asked) {
        return new ViseGrip(part, jaws, asked, null, null, Moving.FLAT);
    }

    public ViseGrip on(Packing under) {
        return new ViseGrip(part, jaws, asked, under, stop, moving);
    }

    public ViseGrip against(EndStop end) {
        return new ViseGrip(part, jaws, asked, packing, end, moving);
    }

    public ViseGrip asked(double other) {
        return new ViseGrip(part, jaws, other, packing, stop, moving);
    }

    /** How the moving jaw bears on the part. */
    public enum Moving {
        FLAT,
        /** On a round bar at half the height that is gripped: one line, that cannot turn the part. */
        BAR
    }

    public ViseGrip by(Moving other) {
        return new ViseGrip(part, jaws, asked, packing, stop, other);
    }

    /** What the moving jaw presses with, N. */
    public double force(Outlook outlook) {
        return asked * GripAsked.share(outlook);
    }

    public Grip grip(Outlook outlook, Load ownWeight) {
        return new Grip(contacts(outlook), ownWeight);
    }

    public List<Contact> contacts(Outlook outlook) {
        boolean solidBehind = jaws.solid() == Jaws.Solid.BACK;
        List<Contact> contacts = new ArrayList<>();
        for (Contact corner : moving(solidBehind ? 0 : part.depth(), outlook)) {
            contacts.add(corner.pressing(force(outlook) / 4, "moving jaw"));
        }
        contacts.addAll(jaw("solid jaw", solidBehind ? part.depth() : 0, outlook));
        if (packing != null) {
            contacts.addAll(corners(packing, outlook));
        }
        if (stop != null) {
            contacts.add(stop.contact(part, outlook));
        }
        return List.copyOf(contacts);
    }

    private List<Contact> moving(double y, Outlook outlook) {
        List<Contact> corners = jaw("moving jaw", y, outlook);
        return switch (moving) {
            case FLAT -> corners;
            case BAR ->
                corners.stream()
                        .map(one -> new Contact(
                                one.name(),
                                new Vector(one.at().x(), one.at().y(), part.gripHeight() / 2),
                                one.normal(),
                                one.friction(),
                                one.press()))
                        .toList();
        };
    }

    private List<Contact> jaw(String name, double y, Outlook outlook) {
        Vector inward = Vector.AWAY.times(y > 0 ? -1 : 1);
        double friction = jaws.friction().at(outlook);
        List<Contact> corners = new ArrayList<>();
        for (boolean top : List.of(false, true)) {
            for (boolean right : List.of(false, true)) {
                Vector at = new Vector(right ? part.right(jaws) : part.left(jaws), y, top ? part.gripHeight() : 0);
                String corner = (top ? "top " : "bottom ") + (right ? "right" : "left");
                corners.add(Contact.reacting(name + ", " + corner, at, inward, friction));
            }
        }
        return corners;
    }

    private static List<Contact> corners(Packing under, Outlook outlook) {
        double friction = PASSIVE_SHARE * under.friction().at(outlook);
        List<Contact> corners = new ArrayList<>();
        for (boolean back : List.of(false, true)) {
            for (boolean right : List.of(false, true)) {
                Vector at = new Vector(right ? under.right() : under.left(), back ? under.back() : under.front(), 0);
                String corner = (back ? "back " : "front ") + (right ? "right" : "left");
                corners.add(Contact.reacting("packing, " + corner, at, Vector.UP, friction));
            }
        }
        return corners;
    }
}
