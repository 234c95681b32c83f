package setwright.batch;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The cutting time of an operation; millimetres, mm/s, seconds.
 *
 * @param passes how often the way is travelled: passes, or equal holes
 * @param approach before the cut, at feed
 * @param length of the cut
 * @param overRun beyond it, at feed
 */
public record CutTime(double passes, double approach, double length, double overRun, double feed) {
    public static final Formula CUTTING_TIME = new Formula(
            "t = i (a + l + u) / f",
            symbol("t", "cutting time", Unit.MINUTE, 0, 1e6),
            List.of(
                    symbol("i", "passes", Unit.NONE, 1, 100),
                    symbol("a", "approach", Unit.MM, 0, 100),
                    symbol("l", "length of cut", Unit.MM, 1, 2000),
                    symbol("u", "over-run", Unit.MM, 0, 100),
                    symbol("f", "feed", Unit.MM_PER_MIN, 5, 3000)),
            v -> new CutTime(v[0], v[1], v[2], v[3], v[4]).seconds(),
            Source.of("computed: travel by feed"));

    public CutTime {
        if (!(feed > 0)) {
            throw new IllegalArgumentException("A cut takes a feed above nought, not " + feed + " mm/s.");
        }
    }

    public double travel() {
        return approach + length + overRun;
    }

    public double seconds() {
        return passes * travel() / feed;
    }
}
