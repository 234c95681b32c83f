package setwright.holding.balance;

/**
 * How hard a contact is pressed on from outside.
 *
 * @param newtons its share of what presses, N
 * @param group contacts of one group press with exactly the sum of their shares, split as the balance likes (the
 *     corners of one vise jaw); empty where the contact presses alone, with exactly its share
 */
public record Press(double newtons, String group) {
    public Press {
        if (!Double.isFinite(newtons) || newtons < 0) {
            throw new IllegalArgumentException("A contact presses with 0 N or more, not " + newtons + " N.");
        }
    }

    boolean alone() {
        return group.isEmpty();
    }
}
