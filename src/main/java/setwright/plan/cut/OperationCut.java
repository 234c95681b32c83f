package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
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
 * @param extremes what a milled cut comes to where it goes worse; null in a hole
 * @param opinions figures worked out another published way as well
 * @param stability how near it is to ringing; null where not asked
 * @param limits every limit with the share used, largest first
 * @param hole how a hole is made; null when milling
 * @param surfaces what the pass leaves of each surface that it cuts
 * @param work what of the work gives under it
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
        @Nullable MilledExtremes extremes,
        List<SecondOpinion> opinions,
        @Nullable Stability stability,
        List<Limit> limits,
        @Nullable HoleWork hole,
        List<SurfaceLeft> surfaces,
        List<WorkGives> work) {
    public OperationCut {
        opinions = List.copyOf(opinions);
        limits = List.copyOf(limits);
        surfaces = List.copyOf(surfaces);
        work = List.copyOf(work);
    }

    /** The same cut with what it leaves, and what gives under it. */
    public OperationCut leaving(List<SurfaceLeft> left, List<WorkGives> gives) {
        return with(stability, left, gives);
    }

    /** The same cut where more is known of its ringing. */
    public OperationCut ringing(Stability known) {
        return with(known, surfaces, work);
    }

    private OperationCut with(@Nullable Stability ringing, List<SurfaceLeft> left, List<WorkGives> gives) {
        return new OperationCut(
                operation,
                speed,
                wantedSpeed,
                feed,
                feedPerEdge,
                secondsPerTurn,
                depth,
                width,
                passes,
                power,
                torque,
                peakForce,
                thrust,
                milling,
                deflection,
                deflectionBand,
                leaves,
                extremes,
                opinions,
                ringing,
                limits,
                hole,
                left,
                gives);
    }

    /** What it leaves of such a surface. */
    public Optional<SurfaceLeft> left(SurfaceLeft.Surface surface) {
        return surfaces.stream().filter(one -> one.surface() == surface).findFirst();
    }

    /** Power from the least to the most, W, wear included; empty where the published ways agree or there is but one. */
    public Optional<Band> powerBand() {
        return Optional.ofNullable(extremes)
                .filter(beyond ->
                        opinions.stream().anyMatch(opinion -> opinion.ours().equals(power) && opinion.apart()))
                .map(MilledExtremes::power);
    }

    /** What more could bind, of which only an estimate is known. */
    public List<LooseLimit> looseLimits() {
        return LooseLimit.of(this);
    }

    /** The limit that binds first. */
    public @Nullable Limit governing() {
        return limits.isEmpty() ? null : limits.get(0);
    }
}
