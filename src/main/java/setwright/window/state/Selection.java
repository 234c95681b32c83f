package setwright.window.state;

/**
 * What is chosen; the same in every way of working.
 *
 * @param setUp id of the set-up; empty while there is none
 * @param line key of the unfolded line of its card: {@link #PART}, {@link #HOLDING} or the id of an operation; empty
 *     while all are folded
 */
public record Selection(String setUp, String line) {
    /** The line of the part itself: number off, material, blank, machine. */
    public static final String PART = "part";

    /** The line of what holds it. */
    public static final String HOLDING = "holding";

    public static final Selection NOTHING = new Selection("", "");

    public Selection withLine(String chosen) {
        return new Selection(setUp, chosen);
    }
}
