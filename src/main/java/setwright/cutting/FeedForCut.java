package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;

/** The feed per tooth or per turn of one cut: that of the table, times what differs from the conditions of the table. */
public final class FeedForCut {
    public static final Formula FEED = new Formula(
            "f = ft kt km kl ke",
            symbol("f", "feed per tooth or per turn", Unit.MM, 0.0005, 10),
            List.of(
                    symbol("ft", "feed of the table", Unit.MM, 0.001, 3),
                    symbol("kt", "factor for a thinned chip", Unit.NONE, 1, 1.5),
                    symbol("km", "factor for a small tool", Unit.NONE, 0.05, 1),
                    symbol("kl", "factor for a long tool", Unit.NONE, 0.2, 1),
                    symbol("ke", "factor for a single edge", Unit.NONE, 0.5, 1)),
            a -> a[0] * a[1] * a[2] * a[3] * a[4],
            Source.of("common practice: the table's feed with reductions, and the full chip in narrow cuts"));

    public static final Table THIN = new Table(
            "factor for a thinned chip",
            "a side cut narrower than half the cutter: the feed whose largest chip is that of the table, at most 1.5 times"
                    + " as much; slots and finishing 1",
            Unit.NONE,
            Source.of("computed: h = 2 fz √(ae/D (1 - ae/D)); common practice: at most 1.5 on manual machines"));

    public static final Table SMALL = new Table(
            "factor for a small tool",
            "below the smallest diameter of the table in ratio to it; cutters with inserts, and tables of one feed, 1",
            Unit.NONE,
            Source.of("common practice: chips in ratio to the size of the tool"));

    public static final Table LONG = new Table(
            "factor for a long tool",
            "milling tools that stand out more than 4 diameters: 4 D / L",
            Unit.NONE,
            Source.of("common practice: less feed for a tool that stands out far"));

    public static final Table SINGLE = new Table(
            "factor for a single edge",
            "a fly cutter's one edge, which takes every blow: 0.75, else 1",
            Unit.NONE,
            Source.of("common practice"));

    /** Most that a thinned chip raises the feed by. */
    public static final double MOST_FOR_THIN_CHIP = 1.5;

    /** Stick-out over diameter from which on less is fed. */
    private static final double LONG_FROM = 4;

    private static final double SINGLE_EDGE = 0.75;

    private FeedForCut() {}

    /**
     * What of a cut its feed depends on, beside the row of the table.
     *
     * @param form of the cutter
     * @param diameter that cuts, mm
     * @param sideWidth width of a side cut that leaves one wall, mm; the diameter in slots, facing and holes
     * @param stickOut mm; 0 where it is not known
     */
    public record Conditions(Cutter.Form form, double diameter, double sideWidth, double stickOut) {}

    public static Worked of(CuttingSpeed row, Conditions on) {
        Given table = Given.of("feed of the table", row.feedAt(on.diameter()), Unit.MM, "shop/" + row.id() + "/feeds");
        return FEED.of(
                table,
                THIN.of("", thinChip(on.sideWidth(), on.diameter())),
                SMALL.of("", small(row, on)),
                LONG.of("", slender(on)),
                SINGLE.of("", on.form() == Cutter.Form.FLY_CUTTER ? SINGLE_EDGE : 1));
    }

    /** 1 from half the diameter on. */
    static double thinChip(double width, double diameter) {
        return width <= 0 ? 1 : Math.min(MOST_FOR_THIN_CHIP, ChipThickness.feedForFullChip(1, width, diameter));
    }

    private static double small(CuttingSpeed row, Conditions on) {
        double least = row.feeds().get(0).diameter().inside();
        boolean level = row.feeds().size() == 1;
        return level || withInserts(on.form()) ? 1 : Math.min(1, on.diameter() / least);
    }

    private static double slender(Conditions on) {
        boolean mills = on.form() == Cutter.Form.END_MILL;
        return mills && on.stickOut() > 0 ? Math.min(1, LONG_FROM * on.diameter() / on.stickOut()) : 1;
    }

    private static boolean withInserts(Cutter.Form form) {
        return form.cutsLike() == Cutter.Form.FACE_MILL || form == Cutter.Form.TAP;
    }
}
