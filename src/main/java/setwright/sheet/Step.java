package setwright.sheet;

/**
 * One step at the machine.
 *
 * @param id stays the same as long as the plan has the step; ticks name it
 * @param operation id, or empty where the step belongs to the whole set-up
 * @param hole number of the hole as on the drawing; 0 where it is about none
 * @param text what the step is, at most 30 words
 * @param act what to do; empty where the text says it all
 * @param check what to look at before going on
 * @param bitesHere the caution or the thinnest margin of this step; empty where there is none
 * @param holds true for a hold point: it wants a reading or a name
 */
public record Step(
        String id,
        Kind kind,
        String setUp,
        String operation,
        int hole,
        String text,
        String act,
        String check,
        String bitesHere,
        boolean holds) {

    /** Most words of a step's text. */
    public static final int WORDS = 30;

    public Step {
        if (words(text) > WORDS) {
            throw new IllegalArgumentException("The step " + id + " has " + words(text) + " words, at most " + WORDS
                    + " can be read from the machine: " + text);
        }
    }

    private static int words(String text) {
        return text.isBlank() ? 0 : text.strip().split("\\s+").length;
    }

    /** The kinds of step. */
    public enum Kind {
        READ,
        CLEAN,
        HOLD,
        ZERO,
        TOOL,
        HEIGHT,
        SPEED,
        CUT,
        MEASURE,
        UNLOAD
    }
}
