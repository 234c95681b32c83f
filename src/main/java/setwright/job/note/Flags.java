package setwright.job.note;

import org.jspecify.annotations.Nullable;
import setwright.job.note.Draft.Said;

/** The words that say one thing each. */
final class Flags {
    private Flags() {}

    static @Nullable Said passed(Cursor cursor) {
        if (cursor.passes("thru", "through", "thro", "thr", "thro'")) {
            cursor.passes("all", "out");
            return Said.THROUGH;
        }
        if (cursor.passes("open", "right across", "full length", "end to end", "whole length")) {
            return Said.OPEN;
        }
        if (cursor.passes("closed")) {
            return Said.CLOSED;
        }
        if (cursor.passes(
                "centred", "centered", "central", "about the middle", "about middle", "in the middle", "middle")) {
            return Said.CENTRED;
        }
        if (cursor.passes("in line", "in a line", "in a row", "inline")) {
            return Said.IN_LINE;
        }
        if (cursor.passes("upright", "crosswise", "across", "front to back")) {
            return Said.UPRIGHT;
        }
        if (cursor.passes("male")) {
            return Said.MALE;
        }
        return cursor.passes("to") ? Said.TO : null;
    }
}
