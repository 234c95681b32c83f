package setwright.window.model;

import java.util.List;

/**
 * The one thing to do next, at the foot.
 *
 * @param caution key of the caution; empty where nothing is open
 * @param hint what a key would do, for instance {@code F4 shows what would mend it}
 * @param page why it matters and what would mend it; {@link Page#CLOSED} while it is not asked for
 */
public record Next(Badge badge, String caution, String sentence, String hint, Page page) {
    /** The same with other words in the place of its sentence and hint; as it is where there are none. */
    Next saying(Foot foot) {
        boolean plain = foot.sentence.isEmpty();
        return plain ? this : new Next(badge, caution, foot.sentence, foot.hint.isEmpty() ? hint : foot.hint, page);
    }

    /**
     * What is said at the foot in the place of the next thing to do.
     *
     * @param sentence empty where nothing is
     * @param hint what a key would do; empty for that of the next thing to do
     */
    public record Foot(String sentence, String hint) {}

    /**
     * The opened caution.
     *
     * @param why why it matters, and how it was worked out
     * @param remedies up to three, already tried
     * @param waiting what the background is still at, or that nothing helps; empty where there are remedies
     * @param accept words before the name of whoever accepts it
     */
    public record Page(boolean open, String why, List<Remedy> remedies, String waiting, String accept) {
        public static final Page CLOSED = new Page(false, "", List.of(), "", "");

        public Page {
            remedies = List.copyOf(remedies);
        }
    }

    /**
     * One remedy.
     *
     * @param effect what else it changes, in words
     */
    public record Remedy(int key, String text, String effect) {}
}
