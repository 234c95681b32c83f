package setwright.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A set of matched pairs of parallels of one thickness and length; counts as one set.
 *
 * @param thickness of wavy ones: over the waves
 * @param heights of adjustable ones: where the range of one pair ends and that of the next begins
 * @param form null: plain
 */
public record Parallels(
        String id,
        String name,
        Typed<Length> thickness,
        Typed<Length> length,
        List<Typed<Length>> heights,
        @Nullable Form form,
        Kept kept,
        String source)
        implements Owned {

    public Parallels {
        heights = List.copyOf(heights);
    }

    /** Plain ones. */
    public Parallels(
            String id,
            String name,
            Typed<Length> thickness,
            Typed<Length> length,
            List<Typed<Length>> heights,
            Kept kept,
            String source) {
        this(id, name, thickness, length, heights, null, kept, source);
    }

    /** The forms of parallel. */
    public enum Form {
        PLAIN,
        /** Bent from spring strip: they stand up and are pressed flat between jaws that are close together. */
        WAVY,
        /** Two wedges that are set to any height between two ends. */
        ADJUSTABLE
    }

    public boolean plain() {
        return form == null || form == Form.PLAIN;
    }

    @Override
    public Kind kind() {
        return Kind.PARALLELS;
    }
}
