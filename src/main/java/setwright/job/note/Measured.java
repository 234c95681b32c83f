package setwright.job.note;

import org.jspecify.annotations.Nullable;
import setwright.job.Size;
import setwright.quantity.Angle;
import setwright.quantity.Typed;

/**
 * A size in a note.
 *
 * @param number the piece with its number
 * @param size as a length; null where an angle is written
 * @param angle null where no unit of an angle is written
 * @param fit tolerance class behind it; null where none
 * @param role what the word beside it says that it is
 * @param to place behind all of it
 */
record Measured(
        Piece number,
        @Nullable Size size,
        @Nullable Typed<Angle> angle,
        @Nullable String fit,
        Role role,
        int to) {
    /** What a size is of. */
    enum Role {
        UNSAID,
        DEPTH,
        LENGTH,
        WIDTH,
        DIAMETER
    }

    Measured as(Role changed, int end) {
        return new Measured(number, size, angle, fit, changed, end);
    }

    /** @throws Halt where an angle stands */
    Size length() {
        if (size == null) {
            throw Halt.refused(
                    Saying.at(number) + " is an angle where a length is wanted; write it without the degrees, as "
                            + number.text().replaceAll("[^0-9./]", "") + ".",
                    number);
        }
        return size;
    }
}
