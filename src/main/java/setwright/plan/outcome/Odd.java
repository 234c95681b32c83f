package setwright.plan.outcome;

/**
 * Something that an operation makes otherwise than drawn.
 *
 * @param feature id
 * @param mm how much stays or goes too far
 * @param where in words, after the amount: {@code in its corners}
 */
public record Odd(String setUp, String operation, String feature, What what, double mm, String where) {
    /** The two ways. */
    public enum What {
        LEFT_STANDING,
        CUT_TOO_MUCH
    }
}
