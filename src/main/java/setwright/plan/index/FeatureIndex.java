package setwright.plan.index;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.location.indexing.Crank;
import setwright.quantity.Rational;

/**
 * How one divided feature is indexed.
 *
 * @param operation the first that cuts it in this set-up
 * @param how the move in words, or why the device does not divide so
 * @param positions from nought; the last is the first again; none where the device does not divide so
 * @param gear null where it is no gear, or its tooth is not known
 */
public record FeatureIndex(
        String setUp,
        String operation,
        String feature,
        String how,
        Scale scale,
        List<Crank.Position> positions,
        @Nullable GearCheck gear) {
    /**
     * What a mark is.
     *
     * @param division degrees of one mark of a dial; nought for the others
     */
    public record Scale(Reading reading, Rational division) {
        static Scale of(Reading reading) {
            return new Scale(reading, Rational.ZERO);
        }
    }

    /** What is read beside the whole turns. */
    public enum Reading {
        HOLES,
        DIAL,
        SIDES
    }

    public FeatureIndex {
        positions = List.copyOf(positions);
    }
}
