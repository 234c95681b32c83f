package setwright.plan;

import setwright.cutting.Cooling;
import setwright.cutting.SpeedForCut;
import setwright.job.InWords;
import setwright.job.Operation;
import setwright.quantity.Given;
import setwright.quantity.Worked;
import setwright.shop.CuttingSpeed;
import setwright.shop.IsoGroup;

/**
 * What the cutting speed of one operation depends on.
 *
 * @param underSkin whether it is the first cut in a face with its skin
 * @param life asked of the edge
 */
public record CutSpeed(Operation.Kind kind, Operation.Coolant coolant, boolean underSkin, Given life) {
    /** The share of its row's cutting speed that a kind of operation is run at (common practice). */
    private static double share(Operation.Kind kind) {
        return switch (kind) {
            case COUNTERSINK -> SpeedForCut.COUNTERSINK;
            case COUNTERBORE, SPOTFACE, BORE -> SpeedForCut.WIDE_EDGE;
            default -> 1;
        };
    }

    public Worked of(CuttingSpeed row, IsoGroup work) {
        Worked factor = SpeedForCut.KIND.of(InWords.word(kind), share(kind));
        return SpeedForCut.of(row, work, new SpeedForCut.Conditions(factor, cooling(coolant), underSkin, life));
    }

    private static Cooling cooling(Operation.Coolant coolant) {
        return switch (coolant) {
            case DRY -> Cooling.DRY;
            case BRUSHED_OIL -> Cooling.BRUSHED;
            case FLOOD -> Cooling.FLOOD;
            case MIST -> Cooling.MIST;
        };
    }
}
