package setwright.plan.cut;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Band;
import setwright.quantity.Value;

/**
 * How near a milling pass is to ringing.
 *
 * @param basis what its modes come from
 * @param waves between one tooth and the next
 * @param depth up to which this speed is quiet, mm; null where that cannot be predicted at this speed
 * @param everywhere up to which every speed is quiet, mm; null where it cannot be predicted
 * @param way how the depth was found
 * @param quietSpeed the nearest speed of this machine at which the pass is quiet, rad/s; null where it is quiet as it is,
 *     where there is none, or where it cannot be predicted
 * @param question what it is worked out from
 */
public record Stability(
        Basis basis,
        Value waves,
        @Nullable Band depth,
        @Nullable Double everywhere,
        Way way,
        @Nullable Double quietSpeed,
        RingingCut question) {

    /** Where modes come from. */
    public enum Basis {
        /** From beam, springs and masses; damping as others have measured it on their machines. */
        ESTIMATED,
        /** From a tap test of this cutter in this holder on this machine. */
        MEASURED
    }

    /** How a depth was found. */
    public enum Way {
        /** Too many waves between teeth: no speed can be aimed at. */
        NOT_PREDICTABLE,
        /** By the zero-order border. */
        ZERO_ORDER,
        /** Through the delayed map of one tooth period. */
        STEPPED
    }

    public boolean predictable() {
        return depth != null;
    }

    /** The depth that is expected to be quiet at this speed, mm. */
    public Optional<Double> quietDepth() {
        return Optional.ofNullable(depth).map(Band::expected);
    }
}
