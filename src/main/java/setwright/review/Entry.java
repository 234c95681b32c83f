package setwright.review;

import org.jspecify.annotations.Nullable;
import setwright.job.Standing;

/**
 * One value of a drawn-up job as text.
 *
 * @param element the thing with an id that it belongs to, for instance {@code s1/h2-drill}; empty for the job
 * @param where the place that it stands at: the element and what of it
 * @param what its key there, for instance {@code stickOut}
 * @param text as typed or as a word
 * @param standing of a planned value; null for what is not planned
 */
record Entry(
        String element,
        String where,
        String what,
        String text,
        @Nullable Standing standing) {
    static final String ORDER_OF = "order of ";
    static final String BETWEEN = ", ";

    boolean isOrder() {
        return what.startsWith(ORDER_OF);
    }

    /** The same place in another plan has the same address. */
    String address() {
        return where + " " + what;
    }

    /** With its standing, for where only that differs. */
    String withStanding() {
        return standing == null ? text : text + ", " + Texts.words(standing);
    }
}
