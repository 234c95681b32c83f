package setwright.holding.balance;

/**
 * A point of the programme with its dual, in the scaled units of {@link Cones}.
 *
 * @param weights one for each edge of each cone, 0 or more
 * @param push how much of the load (scaled to one) is balanced
 * @param dual one number a row: the motion that starts, and how far each group closes
 */
record Solution(Proves proves, double[] weights, double push, double[] dual) {
    /** The same point with another dual. */
    Solution by(double[] other) {
        return new Solution(proves, weights, push, other);
    }

    /** What the point shows, if its certificate is good. */
    enum Proves {
        /** No more than this push is balanced, and this much is. */
        EXACTLY,
        /** At least this push is balanced. */
        AT_LEAST,
        /** Nothing is balanced, not even without a load. */
        NOTHING
    }
}
