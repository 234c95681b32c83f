package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * Taylor's tool life: v T^n = C, where C is the cutting speed at which an edge lives one minute. Kernels take speeds in
 * mm/s and lives in s.
 */
public final class ToolLife {
    /** The life in s that tables of cutting speeds are meant for, where they do not say another (common practice). */
    public static final double ASKED = 3600;

    private static final double MINUTE = 60;
    private static final Source TAYLOR = Source.of(
            "P.C. Sharma, A Textbook of Production Engineering, Ex 14.1 and 14.7; Kalpakjian & Schmid Ex 21.2 p.577");
    private static final Symbol SPEED = symbol("v", "cutting speed", Unit.M_PER_MIN, 1, 1000);
    private static final Symbol LIFE_MINUTES = symbol("T", "tool life", Unit.MINUTE, 0.1, 1000);
    private static final Symbol EXPONENT_N = symbol("n", "exponent of tool life", Unit.NONE, 0.08, 0.7);
    private static final Symbol CONSTANT_C = symbol("C", "speed for a life of one minute", Unit.M_PER_MIN, 5, 1000);

    public static final Formula LIFE = new Formula(
            "T = (C / v)^(1 / n)",
            LIFE_MINUTES,
            List.of(SPEED, EXPONENT_N, CONSTANT_C),
            a -> life(a[0], a[1], a[2]),
            TAYLOR);

    public static final Formula SPEED_FOR_LIFE = new Formula(
            "v = C / T^n",
            SPEED,
            List.of(LIFE_MINUTES, EXPONENT_N, CONSTANT_C),
            a -> speedForLife(a[0], a[1], a[2]),
            TAYLOR);

    /** From two tests at different speeds. */
    public static final Formula EXPONENT = new Formula(
            "n = ln(v2 / v1) / ln(T1 / T2)",
            EXPONENT_N,
            List.of(
                    symbol("v1", "cutting speed of the first test", Unit.M_PER_MIN, 5, 50),
                    symbol("T1", "tool life of the first test", Unit.MINUTE, 60, 1000),
                    symbol("v2", "cutting speed of the second test", Unit.M_PER_MIN, 60, 1000),
                    symbol("T2", "tool life of the second test", Unit.MINUTE, 0.1, 50)),
            a -> exponent(a[0], a[1], a[2], a[3]),
            TAYLOR);

    /** With feed per turn and depth of cut; C has the units that its exponents ask for. */
    public static final Formula EXTENDED_LIFE = new Formula(
            "T = (C / (v f^x d^y))^(1 / n)",
            LIFE_MINUTES,
            List.of(
                    SPEED,
                    symbol("f", "feed per turn", Unit.MM_PER_REV, 0.05, 2),
                    symbol("d", "depth of cut", Unit.MM, 0.1, 10),
                    EXPONENT_N,
                    symbol("x", "exponent of feed", Unit.NONE, 0, 1),
                    symbol("y", "exponent of depth", Unit.NONE, 0, 1),
                    CONSTANT_C),
            a -> extendedLife(new Cut(a[0], a[1], a[2]), new Exponents(a[3], a[4], a[5]), a[6]),
            Source.of("P.C. Sharma Ex 14.4 p.566"));

    private ToolLife() {}

    /** Cutting speed mm/s, feed per turn mm, depth of cut mm. */
    public record Cut(double speed, double feed, double depth) {}

    /** Of life, feed and depth. */
    public record Exponents(double life, double feed, double depth) {}

    public static double life(double speed, double exponent, double constant) {
        return MINUTE * StrictMath.pow(constant / speed, 1 / exponent);
    }

    public static double speedForLife(double life, double exponent, double constant) {
        return constant / StrictMath.pow(life / MINUTE, exponent);
    }

    public static double exponent(double speed, double life, double otherSpeed, double otherLife) {
        return StrictMath.log(otherSpeed / speed) / StrictMath.log(life / otherLife);
    }

    /** The speed for a life of one minute, from one test. */
    public static double constant(double speed, double life, double exponent) {
        return speed * StrictMath.pow(life / MINUTE, exponent);
    }

    public static double extendedLife(Cut cut, Exponents exponents, double constant) {
        double share = constant
                / (cut.speed()
                        * StrictMath.pow(cut.feed(), exponents.feed())
                        * StrictMath.pow(cut.depth(), exponents.depth()));
        return MINUTE * StrictMath.pow(share, 1 / exponents.life());
    }
}
