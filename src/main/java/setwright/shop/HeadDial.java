package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;

/**
 * The dial of a boring head, and how far its slide goes.
 *
 * @param reads what its divisions count
 * @param division what one division is worth, as it reads
 * @param travel of the slide out of the middle
 * @param fastestOffset speed that is safe with the slide all the way out; null where no limit is known
 */
public record HeadDial(
        Reads reads,
        Typed<Length> division,
        Typed<Length> travel,
        @Nullable Typed<SpindleSpeed> fastestOffset) {
    /** What a dial counts: one that reads the diameter moves the bar half of what it says. */
    public enum Reads {
        DIAMETER,
        RADIUS
    }

    /** What it reads when a bore grows by this much on the diameter, mm. */
    public double reading(double onDiameter) {
        return switch (reads) {
            case DIAMETER -> onDiameter;
            case RADIUS -> onDiameter / 2;
        };
    }
}
