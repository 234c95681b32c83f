package setwright.plan.cut;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Limit;
import setwright.cutting.MillingLoad;
import setwright.quantity.Band;
import setwright.quantity.Value;

/**
 * One operation's cut. Values carry their working; bands are pessimistic to optimistic ends of the same figure.
 *
 * @param speed of the spindle, rad/s inside
 * @param wantedSpeed what the cutting speed asks for
 * @param feed mm/s inside
 * @param feedPerEdge per tooth when milling, per turn in a hole, mm
 * @param secondsPerTurn of the handle for a hand-fed axis; null where power feeds
 * @param depth axial depth of a pass, mm; in a hole its full travel in the work
 * @param width radial width of a pass, mm; the diameter in a hole
 * @param passes how many
 * @param power at the cutter, W inside
 * @param torque at the spindle, N·mm inside
 * @param peakForce largest side force on the cutter, N; null in a hole
 * @param thrust along the spindle, N; null when milling
 * @param milling the load over a turn; null in a hole
 * @param deflection spring of the tool at the cut, mm, on all springs of the chain; null where not asked
 * @param deflectionBand the same with soft and stiff machine; null where not asked
 * @param leaves how far the leaning tool leaves a face out, normal to it, mm; null where not asked
 * @param opinions figures worked out another published way as well
 * @param limits every limit with the share used, largest first
 */
public record OperationCut(
        String operation,
        Value speed,
        Value wantedSpeed,
        Value feed,
        Value feedPerEdge,
        @Nullable Value secondsPerTurn,
        double depth,
        double width,
        int passes,
        Value power,
        Value torque,
        @Nullable Value peakForce,
        @Nullable Value thrust,
        @Nullable MillingLoad milling,
        @Nullable Value deflection,
        @Nullable Band deflectionBand,
        @Nullable Value leaves,
        List<SecondOpinion> opinions,
        List<Limit> limits) {
    public OperationCut {
        opinions = List.copyOf(opinions);
        limits = List.copyOf(limits);
    }

    /** The limit that binds first. */
    public @Nullable Limit governing() {
        return limits.isEmpty() ? null : limits.get(0);
    }
}
