package setwright.job.note;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Point3;
import setwright.job.Blank;
import setwright.job.Block;
import setwright.job.Feature;
import setwright.quantity.UnitSystem;

/**
 * What a note is read against.
 *
 * @param units of a bare number
 * @param blank what the part starts from; null where it is not known yet, then nothing is held against it
 * @param features that the part has already; new ones get the next free ids
 */
public record NoteContext(UnitSystem units, @Nullable Blank blank, List<Feature> features) {
    public NoteContext {
        features = List.copyOf(features);
    }

    /** With further features. */
    public NoteContext with(List<Feature> more) {
        return new NoteContext(
                units, blank, Stream.concat(features.stream(), more.stream()).toList());
    }

    /** Nominal length, depth and height of the blank; null where it is not known. */
    @Nullable
    Point3 size() {
        if (blank == null) {
            return null;
        }
        Block box = blank.envelope();
        return new Point3(
                box.length().nominal().inside(),
                box.depth().nominal().inside(),
                box.height().nominal().inside());
    }

    /** Whether the blank is a round bar or tube, its axis upright as drawn. */
    boolean isRound() {
        return blank != null && (blank.kind() == Blank.Kind.ROUND_BAR || blank.kind() == Blank.Kind.TUBE);
    }

    /** The next free id that starts so: {@code hole3}. */
    String id(String start) {
        int number = 1;
        while (taken(start + number)) {
            number++;
        }
        return start + number;
    }

    private boolean taken(String id) {
        return features.stream().anyMatch(feature -> feature.id().equals(id));
    }
}
