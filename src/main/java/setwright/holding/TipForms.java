package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A block on a table that a level force tips over its far edge or slides. P the force at the height h, W the weight in
 * the middle of the base b, C a clamp at the distance x from the edge, s the height of a stop at that edge, µ the
 * friction; N and mm.
 */
public final class TipForms {
    private static final Symbol FORCE = symbol("P", "force", Unit.N, 1, 1e5);
    private static final Symbol HEIGHT = symbol("h", "height of the force", Unit.MM, 50, 500);
    private static final Symbol WEIGHT = symbol("W", "weight", Unit.N, 0, 1e5);
    private static final Symbol BASE = symbol("b", "base", Unit.MM, 1, 1000);
    private static final Symbol CLAMP = symbol("C", "clamp force", Unit.N, 0, 1e5);
    private static final Symbol TO_EDGE = symbol("x", "clamp to edge", Unit.MM, 0, 1000);
    private static final Symbol STOP = symbol("s", "stop height", Unit.MM, 0, 49);

    /** How many times the force it takes to tip the block; meant for h above s. */
    public static final Formula TIP_OVER = new Formula(
            "k = (C x + W b / 2) / (P (h - s))",
            symbol("k", "factor against tipping", Unit.NONE, 0, 1e6),
            List.of(CLAMP, TO_EDGE, WEIGHT, BASE, FORCE, HEIGHT, STOP),
            a -> standing(a[0], a[1], a[2], a[3]) / tipping(a[4], a[5], a[6]),
            Source.of("Block sliding and tipping examples 1 and 3,"
                    + " http://www.ae.msstate.edu/vlsm/friction/horizontal_surface/examples/ (moment about the edge)"));

    private TipForms() {}

    /** Moment that keeps the block on the table, N·mm. */
    public static double standing(double clamp, double clampToEdge, double weight, double base) {
        return clamp * clampToEdge + weight * base / 2;
    }

    /** Moment that tips it, N·mm. */
    public static double tipping(double force, double height, double stopHeight) {
        return force * (height - stopHeight);
    }

    /** Clamp force (N) at which a block starts to slide, on that many rubbing faces of the clamp. */
    public static double clampAgainstSliding(double force, double weight, double friction, int faces) {
        return (force / friction - weight) / faces;
    }

    /** Height (mm) over which a block tips sooner than it slides. */
    public static double heightWhereItTips(double halfBase, double friction) {
        return halfBase / friction;
    }
}
