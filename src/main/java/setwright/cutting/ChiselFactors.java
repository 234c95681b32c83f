package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * What the chisel edge of a drill adds to the work of its lips.
 *
 * @param torque A
 * @param lips B, of the thrust of lips and chisel in cutting
 * @param web J, of the thrust that presses the chisel in
 */
public record ChiselFactors(double torque, double lips, double web) {
    private static final Source LIPS_AND_CHISEL =
            Source.of("from memory: Shaw and Oxford, lips and chisel; within 1 % of"
                    + " Machinery's Handbook 31st ed. p.1152 Table 7 but for A at 0.15 and J up to 0.18");
    private static final Source RING = Source.of(
            "from memory: Shaw and Oxford; what lies within the pilot is taken off the chisel's part, and off the lips' part"
                    + " once the pilot is wider than the chisel");
    private static final Symbol CHISEL = symbol("x", "chisel edge to drill diameter", Unit.NONE, 0.02, 0.4);
    private static final Symbol PILOT = symbol("y", "pilot hole to drill diameter", Unit.NONE, 0, 0.95);
    private static final Symbol RESULT_A = symbol("A", "chisel factor of torque", Unit.NONE, 0, 2);
    private static final Symbol RESULT_B = symbol("B", "chisel factor of thrust", Unit.NONE, 0, 2);
    private static final Symbol RESULT_J = symbol("J", "web factor of thrust", Unit.NONE, 0, 0.2);

    /** A plain twist drill. */
    public static final double STANDARD_WEB = 0.18;

    /** A drill whose point is split or thinned. */
    public static final double SPLIT_POINT = 0.03;

    public static final Formula TORQUE = new Formula(
            "A = (1 - x^2) / (1 + x)^0.2 + 3.2 x^1.8",
            RESULT_A,
            List.of(CHISEL),
            a -> torque(a[0], 0),
            LIPS_AND_CHISEL);

    public static final Formula LIPS = new Formula(
            "B = (1 - x) / (1 + x)^0.2 + 2.2 x^0.8", RESULT_B, List.of(CHISEL), a -> lips(a[0], 0), LIPS_AND_CHISEL);

    public static final Formula WEB =
            new Formula("J = x^2", RESULT_J, List.of(CHISEL), a -> web(a[0], 0), LIPS_AND_CHISEL);

    public static final Formula TORQUE_WITH_PILOT = new Formula(
            "A = (1 - max(x, y)^2) / (1 + max(x, y))^0.2 + 3.2 max(x^1.8 - y^1.8, 0)",
            RESULT_A,
            List.of(CHISEL, PILOT),
            a -> torque(a[0], a[1]),
            RING);

    public static final Formula LIPS_WITH_PILOT = new Formula(
            "B = (1 - max(x, y)) / (1 + max(x, y))^0.2 + 2.2 max(x^0.8 - y^0.8, 0)",
            RESULT_B,
            List.of(CHISEL, PILOT),
            a -> lips(a[0], a[1]),
            RING);

    public static final Formula WEB_WITH_PILOT =
            new Formula("J = max(x^2 - y^2, 0)", RESULT_J, List.of(CHISEL, PILOT), a -> web(a[0], a[1]), RING);

    /**
     * @param webRatio length of the chisel edge over the drill's diameter
     * @param pilotRatio pilot hole over the drill's diameter; 0 in solid work
     */
    public static ChiselFactors of(double webRatio, double pilotRatio) {
        return new ChiselFactors(torque(webRatio, pilotRatio), lips(webRatio, pilotRatio), web(webRatio, pilotRatio));
    }

    public static double torque(double webRatio, double pilotRatio) {
        double core = Math.max(webRatio, pilotRatio);
        return (1 - core * core) / StrictMath.pow(1 + core, 0.2) + 3.2 * left(webRatio, pilotRatio, 1.8);
    }

    public static double lips(double webRatio, double pilotRatio) {
        double core = Math.max(webRatio, pilotRatio);
        return (1 - core) / StrictMath.pow(1 + core, 0.2) + 2.2 * left(webRatio, pilotRatio, 0.8);
    }

    public static double web(double webRatio, double pilotRatio) {
        return left(webRatio, pilotRatio, 2);
    }

    /** What a pilot leaves of the chisel. */
    private static double left(double webRatio, double pilotRatio, double power) {
        return Math.max(0, StrictMath.pow(webRatio, power) - StrictMath.pow(pilotRatio, power));
    }
}
