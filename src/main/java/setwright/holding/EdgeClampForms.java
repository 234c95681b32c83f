package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** A clamp that is drawn against an edge of the work by its own screw, and pulls it a little down. */
public final class EdgeClampForms {
    private static final Symbol SCREW = symbol("F", "force of the screw", Unit.N, 0, 1e6);

    /** What it presses on the work with, along its own slant. */
    public static final Formula ON_WORK = new Formula(
            "W = F s √(1 + q^2)",
            symbol("W", "force on the work", Unit.N, 0, 1e6),
            List.of(
                    SCREW,
                    symbol("s", "sideways for each unit of the screw", Unit.NONE, 0.1, 1),
                    symbol("q", "down for each unit sideways", Unit.NONE, 0, 1)),
            a -> onWork(a[0], a[1], a[2]),
            Source.of("computed (statics of a slanted push); the shares are those of the clamp's row"));

    private EdgeClampForms() {}

    /** Force (N) on the work along the slant of the push. */
    public static double onWork(double screw, double sideways, double down) {
        return screw * sideways * StrictMath.hypot(1, down);
    }
}
