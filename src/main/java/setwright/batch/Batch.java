package setwright.batch;

/**
 * A batch as the orders of working it see it; times in seconds.
 *
 * @param parts number off, a whole number
 * @param tools that a part wants in this set-up, a whole number
 * @param toolChange one change of the tool, with its touch-off
 * @param load loading and unloading a part once
 * @param cut cutting one part, without changes of the tool
 * @param setUp once for the batch
 */
public record Batch(double parts, double tools, double toolChange, double load, double cut, double setUp) {
    public Batch {
        if (!(parts >= 1 && tools >= 1 && toolChange >= 0 && load >= 0 && cut >= 0 && setUp >= 0)) {
            throw new IllegalArgumentException(
                    "A batch has one part and one tool or more and no time below nought, not "
                            + parts + " parts, " + tools + " tools, tool change " + toolChange + " s, load " + load
                            + " s, cut "
                            + cut + " s, set-up " + setUp + " s.");
        }
    }

    /** The same work with another number off. */
    public Batch of(double other) {
        return new Batch(other, tools, toolChange, load, cut, setUp);
    }
}
