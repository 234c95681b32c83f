package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * What a vise has to be done up to, in closed form: rigid jaws, equal friction on both, no parallels, one force and no
 * end stop. P the force in N, µ the friction, h the height of the force over the bottom of the jaws, g the height that
 * the jaws grip, w the width between them, all mm. They hold where the force acts above the jaws (h ≥ g) in the middle of
 * their length, and are the check on the friction balance.
 */
public final class ViseForms {
    private static final Source STATICS = Source.of("computed (statics of a rigid part between two jaws)");
    private static final Symbol FORCE = symbol("P", "force", Unit.N, 0, 1e5);
    private static final Symbol FRICTION = symbol("µ", "friction", Unit.NONE, 0.02, 0.8);
    private static final Symbol HEIGHT = symbol("h", "height of the force", Unit.MM, 0, 500);
    private static final Symbol GRIPPED = symbol("g", "height gripped", Unit.MM, 1, 200);
    private static final Symbol WIDTH = symbol("w", "width between the jaws", Unit.MM, 1, 500);
    private static final Symbol GRIP = symbol("N", "grip needed", Unit.N, 0, 1e7);

    /** A force along the jaws, or straight up, without a moment. */
    public static final Formula ALONG =
            new Formula("N = P / (2 µ)", GRIP, List.of(FORCE, FRICTION), a -> along(a[0], a[1]), STATICS);

    /** A force square to the jaws, away from the solid one. */
    public static final Formula AWAY = new Formula(
            "N = P (h + µ w) / (g + µ w)",
            GRIP,
            List.of(FORCE, HEIGHT, FRICTION, WIDTH, GRIPPED),
            a -> a[0] * shareAway(a[1], a[2], a[3], a[4]),
            STATICS);

    /** A force square to the jaws, toward the solid one. */
    public static final Formula TOWARD = new Formula(
            "N = P (h - g) / (g + µ w)",
            GRIP,
            List.of(FORCE, HEIGHT, FRICTION, WIDTH, GRIPPED),
            a -> a[0] * shareToward(a[1], a[2], a[3], a[4]),
            STATICS);

    private ViseForms() {}

    /** Grip (N) against a force along the jaws or straight up: both jaws rub. */
    public static double along(double force, double friction) {
        return force / (2 * friction);
    }

    /** Grip for each newton away from the solid jaw. */
    public static double shareAway(double height, double friction, double width, double gripped) {
        return (height + friction * width) / (gripped + friction * width);
    }

    /** Grip for each newton toward the solid jaw. */
    public static double shareToward(double height, double friction, double width, double gripped) {
        return (height - gripped) / (gripped + friction * width);
    }
}
