package setwright.cutting;

/**
 * How much of one limit a choice uses up.
 *
 * @param used 0 nothing, 1 all of it, more where the choice is beyond it
 */
public record Limit(LimitName name, double used) {
    public Limit {
        if (Double.isNaN(used)) {
            throw new IllegalArgumentException("How much of the " + name.words() + " is used up has to be a number.");
        }
    }

    public boolean broken() {
        return used > 1;
    }
}
