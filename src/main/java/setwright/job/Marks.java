package setwright.job;

/**
 * Longer lines among graduations, counted from the first, which is number nought. Where both fall the long one is cut.
 *
 * @param longEvery so many divisions from one long line to the next
 * @param middleEvery so many from one middle line to the next
 */
public record Marks(int longEvery, Size longLength, int middleEvery, Size middleLength) {
    /** The length of the line at a position; the short one is the feature's own. */
    public Line at(int number) {
        if (number % longEvery == 0) {
            return Line.LONG;
        }
        return number % middleEvery == 0 ? Line.MIDDLE : Line.SHORT;
    }

    /** How long a line is. */
    public enum Line {
        LONG,
        MIDDLE,
        SHORT
    }
}
