package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.plan.cut.SurfaceLeft.Surface;
import setwright.shop.Holder;

/**
 * How much wider than its cutter a slot at size may come.
 *
 * @param runOut of the holder, middle between its good and its poor end, mm
 * @param wander how far the cutter stands off its path at most, to either side, mm
 */
public record SlotWidth(double runOut, double wander) {
    /** Empty where the cutter does not cut both sides at once. */
    public static Optional<SlotWidth> of(Holder holder, List<SurfaceLeft> left) {
        double runOut = (holder.runOutLow().inside() + holder.runOutHigh().inside()) / 2;
        return left.stream()
                .filter(one -> Stream.of(Surface.CLIMB_SIDE, Surface.CONVENTIONAL_SIDE)
                        .anyMatch(side -> side == one.surface()))
                .map(one -> Math.abs(one.inside()))
                .max(Double::compare)
                .map(wander -> new SlotWidth(runOut, wander));
    }

    /** By so much together, mm. */
    public double over() {
        return runOut + wander;
    }
}
