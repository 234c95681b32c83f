package setwright.plan;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.shop.ChamferMill;
import setwright.shop.DovetailCutter;
import setwright.shop.EndMill;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.TSlotCutter;

/** A block of aluminium 6061, 100 x 60 x 25 mm, for the shop as it stands, and the features that tests put on it. */
final class AluminiumBlock {
    private static final Reading READING = new Reading(UnitSystem.METRIC);

    private AluminiumBlock() {}

    /** The block with features, drawn up from nothing. */
    static Job with(Feature... features) {
        return with(List.of("100 mm", "60 mm", "25 mm"), features);
    }

    /** A block of other sizes. */
    static Job with(List<String> sizes, Feature... features) {
        Job job = BearingBlock.job();
        Block block = new Block(
                size(sizes.get(0)),
                size(sizes.get(1)),
                size(sizes.get(2)),
                job.plan().blank().faces());
        return job.withPlan(job.plan()
                .withMaterial("aluminium-6061")
                .withNumberOff(1)
                .withBlank(block)
                .withFeatures(List.of(features)));
    }

    static Plan plan(Feature... features) {
        return Planner.plan(with(features), BearingBlock.shop());
    }

    /** The shop with a drawer of a few end mills and no cones or tails, so that what is worked by hand stays the same. */
    static Shop drawer() {
        List<String> kept = List.of(
                "end-mill-hss-12x26-shank12",
                "end-mill-hss-14x26-shank12",
                "end-mill-hss-20x38-shank20",
                "end-mill-hss-25x45-shank25",
                "slot-drill-hss-8x11-shank10",
                "slot-drill-hss-10x13-shank10",
                "slot-drill-hss-12x16-shank12");
        List<ShopRow> rows = BearingBlock.shop().rows().stream()
                .filter(row -> !(row instanceof EndMill) || kept.contains(row.id()))
                .filter(row ->
                        !(row instanceof ChamferMill || row instanceof DovetailCutter || row instanceof TSlotCutter))
                .toList();
        return Shop.of(rows);
    }

    static Typed<Length> mm(String text) {
        return READING.length(text);
    }

    static Typed<Angle> angle(String text) {
        return READING.angle(text);
    }

    static Size size(String text) {
        return Size.of(mm(text));
    }

    static Placed middle() {
        return new Placed(Pattern.Datum.CENTRE, mm("0 mm"), mm("0 mm"), null);
    }

    static Hole tapped() {
        return new Hole(
                "hole1",
                "4x M6 thru",
                Side.TOP,
                Hole.Make.TAPPED,
                size("6 mm"),
                "M6",
                null,
                null,
                new Pattern.Grid(
                        Pattern.Datum.CENTRE,
                        new Pattern.Place(mm("0 mm"), mm("0 mm")),
                        2,
                        2,
                        mm("76 mm"),
                        mm("36 mm")),
                null,
                GotBy.TOOL);
    }

    static Slot openSlot() {
        return new Slot(
                "slot1", "slot 12 x 8 deep", Side.TOP, size("12 mm"), size("8 mm"), null, middle(), null, GotBy.TOOL);
    }

    static Slot closedSlot() {
        return new Slot(
                "slot1",
                "slot 12 x 40 x 5 deep",
                Side.TOP,
                size("12 mm"),
                size("5 mm"),
                size("40 mm"),
                middle(),
                null,
                GotBy.TOOL);
    }
}
