package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The handbook's second opinion on power: so much for each volume that is removed in a second. For milling its feed
 * factor takes the feed per tooth, so that a thin chip of a narrow cut is not seen.
 */
public final class UnitPower {
    /** The feed per tooth or turn at which the feed factor is 1, mm. */
    public static final double FEED_OF_TABLE = 0.3;

    public static final Formula AT_CUTTER = new Formula(
            "P = Kp Q C W / 60",
            symbol("P", "power at the cutter", Unit.KW, 0.001, 100),
            List.of(
                    symbol("Kp", "unit power", Unit.KW_S_PER_CM3, 0.1, 10),
                    symbol("Q", "removal rate", Unit.CM3_PER_MIN, 0.01, 5000),
                    symbol("C", "feed factor", Unit.NONE, 0.5, 2.5),
                    symbol("W", "wear factor", Unit.NONE, 1, 2)),
            a -> atCutter(new Cut(a[0], a[1], a[2], a[3])),
            Source.of(
                    "from memory: Machinery's Handbook 31st ed., Pc = Kp C Q W (its Table 1b of Kp, p.1147, was read)"));

    public static final Formula FEED_FACTOR = new Formula(
            "C = (0.3 / f)^0.2",
            symbol("C", "feed factor", Unit.NONE, 0.5, 2.5),
            List.of(symbol("f", "feed per tooth or per turn", Unit.MM, 0.01, 2)),
            a -> feedFactor(a[0]),
            Source.of("from memory: within 3 % of the handbook's table of feed factors"));

    private UnitPower() {}

    /**
     * What is removed and how.
     *
     * @param unitPower Kp, N/mm²
     * @param removalRate mm³/s
     * @param feedFactor C
     * @param wearFactor W
     */
    public record Cut(double unitPower, double removalRate, double feedFactor, double wearFactor) {}

    /** Power at the cutter, W. */
    public static double atCutter(Cut cut) {
        return CuttingPower.powerOfRemoval(cut.removalRate(), cut.unitPower()) * cut.feedFactor() * cut.wearFactor();
    }

    public static double feedFactor(double feed) {
        return StrictMath.pow(FEED_OF_TABLE / feed, 0.2);
    }
}
