package setwright.plan.cut;

import java.util.Optional;
import setwright.rigidity.Rod;
import setwright.rigidity.ToolMaterials;
import setwright.rigidity.TwistedRod;
import setwright.shop.Cutter;

/**
 * A drill or a tap as the round rod that its flutes leave.
 *
 * @param round diameter of that rod, mm
 * @param stickOut mm
 */
public record ThinTool(Cutter cutter, double round, double stickOut) {
    /** Empty for what neither twists off nor buckles before something else gives. */
    public static Optional<ThinTool> of(Cutter cutter, double stickOut) {
        return switch (cutter.form()) {
            case DRILL -> Optional.of(new ThinTool(cutter, TwistedRod.DRILL * diameter(cutter), stickOut));
            case TAP -> Optional.of(new ThinTool(cutter, TwistedRod.TAP * diameter(cutter), stickOut));
            default -> Optional.empty();
        };
    }

    private static double diameter(Cutter cutter) {
        return cutter.diameter().inside();
    }

    /** Share of the torque at which it twists off. */
    public double twisting(double torque) {
        return torque
                / TwistedRod.twistsOff(TwistedRod.strength(cutter.material()).expected(), round);
    }

    /** Share of the push at which it buckles, its point led by the spot or the hole. */
    public double buckling(double thrust) {
        return stickOut <= 0 ? 0 : thrust / buckles();
    }

    private double buckles() {
        return Rod.buckling(
                Rod.Ends.FIXED_PINNED.factor(),
                ToolMaterials.modulus(cutter.material()).expected(),
                round,
                stickOut);
    }
}
