package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Table travel that a cut asks for; millimetres. */
public final class Travel {
    /** A face cut whose cutter starts and ends clear of the part. */
    public static final Formula FACING = new Formula(
            "X = l + D + 2 a",
            symbol("X", "travel", Unit.MM, 0, 3000),
            List.of(
                    symbol("l", "length of the face", Unit.MM, 1, 1000),
                    symbol("D", "cutter diameter", Unit.MM, 1, 200),
                    symbol("a", "approach", Unit.MM, 0, 20)),
            v -> facing(v[0], v[1], v[2]),
            Source.of("common practice: the cutter runs off at both ends"));
    /** A saw cuts as deep as its rim stands out of its flange. */
    public static final Formula SAW_REACH = new Formula(
            "t = (D - f) / 2 - k",
            symbol("t", "depth that the saw reaches", Unit.MM, 0, 150),
            List.of(
                    symbol("D", "saw diameter", Unit.MM, 50, 300),
                    symbol("f", "flange diameter", Unit.MM, 10, 45),
                    symbol("k", "clearance", Unit.MM, 0, 2)),
            v -> sawReach(v[0], v[1], v[2]),
            Source.of("common practice"));

    private Travel() {}

    public static double facing(double length, double cutterDiameter, double approach) {
        return length + cutterDiameter + 2 * approach;
    }

    public static double sawReach(double sawDiameter, double flangeDiameter, double clearance) {
        return (sawDiameter - flangeDiameter) / 2 - clearance;
    }
}
