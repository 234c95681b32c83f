package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A wedge that lifts a block beside a wall, all faces with the same friction: the principle of adjustable parallels and
 * levelling wedges. α the angle of the wedge, µ the friction, W what is lifted in N.
 */
public final class WedgeForms {
    private static final Source STATICS = Source.of("computed (wedge, block and wall in balance at the point of slip)");
    private static final Symbol ANGLE = symbol("α", "angle of the wedge", Unit.RAD, 0.02, 0.5);
    private static final Symbol FRICTION = symbol("µ", "friction", Unit.NONE, 0.05, 0.4);

    /** Angle of friction twice: once on either face of the wedge; the wall beside the block adds none. */
    public static final Formula DRIVE = new Formula(
            "P = W tan(α + 2 arctan(µ))",
            symbol("P", "push on the wedge", Unit.N, 0, 1e7),
            List.of(symbol("W", "what is lifted", Unit.N, 1, 1e5), ANGLE, FRICTION),
            a -> drive(a[0], a[1], a[2]),
            STATICS);

    private WedgeForms() {}

    public static double drive(double lifted, double angle, double friction) {
        return lifted * StrictMath.tan(angle + 2 * StrictMath.atan(friction));
    }

    /** Whether the wedge stays in when the push is gone. */
    public static boolean holdsItself(double angle, double friction) {
        return angle < 2 * StrictMath.atan(friction);
    }
}
