package setwright.holding.balance;

import org.jspecify.annotations.Nullable;

/**
 * One place where a fixture touches the part. Without a press it reacts: it gives whatever the balance needs and never
 * pulls.
 *
 * @param name in the trade's words, for instance {@code moving jaw, top left}
 * @param at the place, mm
 * @param normal one long, from the fixture into the part
 * @param friction how many newtons along the face for each newton square to it
 * @param press what presses it on, or none
 */
public record Contact(
        String name,
        Vector at,
        Vector normal,
        double friction,
        @Nullable Press press) {
    public Contact {
        if (Math.abs(normal.length() - 1) > 1e-9) {
            throw new IllegalArgumentException(
                    "The normal of " + name + " is " + normal.length() + " long; a normal is one long.");
        }
        if (!Double.isFinite(friction) || friction < 0) {
            throw new IllegalArgumentException("The friction of " + name + " is " + friction + "; it is 0 or more.");
        }
    }

    /** A contact that only reacts; the normal may have any length. */
    public static Contact reacting(String name, Vector at, Vector normal, double friction) {
        return new Contact(name, at, normal.unit(), friction, null);
    }

    /** The same contact, pressed on with exactly this force. */
    public Contact pressing(double newtons) {
        return new Contact(name, at, normal, friction, new Press(newtons, ""));
    }

    /** The same contact, pressed on with a share of what its group has together. */
    public Contact pressing(double newtons, String group) {
        return new Contact(name, at, normal, friction, new Press(newtons, group));
    }

    /** The same contact of one of several things alike: what presses on it is shared with that one's contacts alone. */
    public Contact called(String which) {
        Press pressed =
                press == null || press.group().isEmpty() ? press : new Press(press.newtons(), press.group() + which);
        return new Contact(name + which, at, normal, friction, pressed);
    }

    /** The same contact with what presses on it that many times as hard. */
    public Contact scaled(double times) {
        return press == null
                ? this
                : new Contact(name, at, normal, friction, new Press(press.newtons() * times, press.group()));
    }
}
