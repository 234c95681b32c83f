package setwright.location.budget;

import java.util.List;
import setwright.location.Contributor;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.quantity.fit.Fits;
import setwright.quantity.fit.Limits;

/** Sizes that a tool makes by itself: drilled and reamed holes, slots as wide as their cutter; millimetres. */
public final class ToolSize {
    private static final List<CsvRows.Row> DRILLED = CsvRows.beside(ToolSize.class, "drilled-holes.csv");

    /** A cutter as a micrometer shows it. */
    private static final double CUTTER = 0.005;

    /** A reamer is made to within this share of the hole's tolerance, and so far below its upper limit. */
    private static final double REAMER_WIDTH = 0.35;

    private static final double REAMER_BELOW = 0.15;

    /** A reamer follows its hole: this share of the run-out of its holder widens the hole. */
    private static final double FOLLOWS = 0.125;

    private static final Source DIN_1420 = Source.of(
            "from memory: DIN 1420, a reamer's limits are 15 % and 50 % of the tolerance below the hole's upper");
    private static final Source COMMON = Source.of("common practice");

    private ToolSize() {}

    /** Beyond the table its last row holds. */
    public static Made drilled(double diameter) {
        double inches = Unit.IN.fromInside(diameter);
        CsvRows.Row row = DRILLED.stream()
                .filter(one -> inches <= one.number("to_in") + 1e-9)
                .findFirst()
                .orElse(DRILLED.get(DRILLED.size() - 1));
        double more = Unit.IN.toInside(row.number("more_in"));
        double less = Unit.IN.toInside(row.number("less_in"));
        return new Made(
                (more - less) / 2,
                List.of(Contributor.oneDirection(
                                "size of a drilled hole", (more + less) / 2, Source.of(row.text("source")))
                        .halvedBy("reaming or boring it")));
    }

    /**
     * @param upper deviation of the hole's upper limit
     * @param tolerance of the hole
     * @param runOut total indicated run-out of the holder
     */
    public static Made reamed(double upper, double tolerance, double runOut) {
        return new Made(
                upper - (REAMER_BELOW + REAMER_WIDTH / 2) * tolerance,
                List.of(
                        Contributor.oneDirection("size of the reamer", REAMER_WIDTH / 2 * tolerance, DIN_1420)
                                .halvedBy("trying the reamer in scrap"),
                        Contributor.oneDirection("run-out of the reamer", FOLLOWS * runOut / 2, COMMON)
                                .halvedBy("a floating holder")));
    }

    /** How far under its nominal size a slot drill for keys lies: the middle of e8. */
    public static double underForKeys(double width) {
        Limits e8 = Fits.listed().limits(width, "e8");
        return (e8.upper() + e8.lower()) / 2;
    }

    /**
     * A slot of a cutter's width in one pass.
     *
     * @param cutter deviation of the cutter from the slot's nominal size
     * @param least and most total indicated run-out of the holder: the slot comes so much wider
     */
    public static Made slot(double cutter, double least, double most) {
        return new Made(
                cutter + (least + most) / 2,
                List.of(
                        Contributor.oneDirection("size of the cutter, measured", CUTTER, COMMON)
                                .halvedBy("trying it in scrap"),
                        Contributor.oneDirection(
                                        "run-out of the holder",
                                        (most - least) / 2,
                                        Source.of("shop: the holder's row"))
                                .halvedBy("a truer holder, or a smaller cutter and both sides")));
    }
}
