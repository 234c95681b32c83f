package setwright.plan.cut;

import java.util.Optional;
import setwright.plan.part.OperationStage;

/**
 * Where in the work the cutter of an operation goes.
 *
 * @param workTop height of the surface that it starts from, mm
 * @param lowest lowest height of its tool point, mm
 * @param runs how often it goes down into a cut
 * @param holeBefore diameter of the hole that earlier operations left there, mm
 * @param marked whether an earlier spot or hole leads it
 */
public record CutPlace(double workTop, double lowest, int runs, Optional<Double> holeBefore, boolean marked) {
    static CutPlace of(OperationStage stage) {
        return new CutPlace(stage.workTop(), stage.lowest(), stage.runs(), stage.holeBefore(), stage.marked());
    }

    /** A single run down to a depth, into solid work. */
    public static CutPlace solid(double workTop, double lowest) {
        return new CutPlace(workTop, lowest, 1, Optional.empty(), false);
    }

    /** How deep the tool point goes, mm. */
    public double depth() {
        return workTop - lowest;
    }

    /** The same, but deeper where that is asked. */
    CutPlace atLeast(double deep) {
        return new CutPlace(workTop, Math.min(lowest, workTop - deep), runs, holeBefore, marked);
    }
}
