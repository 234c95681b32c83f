package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Operation;
import setwright.location.Contributor;
import setwright.location.Thermal;
import setwright.location.budget.AxisErrors;
import setwright.location.budget.Made;
import setwright.location.budget.Measured;
import setwright.location.budget.ToolSize;
import setwright.plan.Rows;
import setwright.plan.cut.CutPlan;
import setwright.quantity.Source;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** What puts a size out, by the way it is got. */
record SizeErrors(Rows rows, CutPlan cut, Loading loading, Making making, Asked asked) {
    /** How much warmer than its gauge a part still is after it was left to cool, K (common practice). */
    private static final double WARMER = 2;

    /** Nearer than this a cutter is as wide as its slot, mm: key-seat cutters and worn ones included. */
    private static final double AS_WIDE = 0.1;

    private static final Source COMMON = Source.of("common practice");

    List<Contributor> contributors() {
        List<Contributor> all =
                new ArrayList<>(asked.feature().got() == GotBy.MEASURED || beforeTheLastPass() ? measured() : got());
        double growth = Thermal.growth(rows.material().expansion().inside(), asked.nominal(), WARMER);
        all.add(Contributor.oneDirection("warmth", growth, COMMON).halvedBy("letting the part cool"));
        return all;
    }

    /** A slot whose sides get a last pass each is measured before it, whatever else gives its size (common practice). */
    private boolean beforeTheLastPass() {
        DrawnOperation operation = making.operation();
        return switch (operation.kind()) {
            case SLOT, KEYSEAT ->
                asked.aspect() == Aspect.WIDTH
                        && !asWide()
                        && operation.finish().value().inside() > 0
                        && operation.lastPass().value() != Operation.LastPass.NONE;
            default -> false;
        };
    }

    private List<Contributor> measured() {
        return switch (asked.aspect()) {
            case DIAMETER -> byTool() ? tool() : Measured.BORE.contributors(Measured.HEAD_SETTING);
            case DEPTH -> Measured.DEPTH.contributors(loading.knee().reading());
            case ACROSS ->
                Measured.OUTSIDE.contributors(
                        upright() ? loading.knee().reading() : loading.table().reading());
            default -> Measured.WIDTH.contributors(loading.table().reading());
        };
    }

    private List<Contributor> got() {
        return switch (asked.aspect()) {
            case DIAMETER -> making.operation().kind() == Operation.Kind.BORE ? Measured.bySightOfTheDial() : tool();
            case DEPTH -> new HeightErrors(loading, making, cut).depth(axis(true));
            case ACROSS -> upright() ? new HeightErrors(loading, making, cut).across(axis(true)) : wall(false);
            case RADIUS -> wall(false);
            default -> byTool() ? tool() : wall(asked.feature().kind() == Feature.Kind.STEP);
        };
    }

    /** A face is cut by height; flats are wound to. */
    private boolean upright() {
        return making.operation().kind() == Operation.Kind.FACE;
    }

    private AxisErrors axis(boolean knee) {
        return switch (asked.feature().got()) {
            case STOP -> AxisErrors.STOP;
            case READOUT -> AxisErrors.READOUT;
            case TOOL, DIAL, MEASURED -> knee ? loading.knee() : loading.table();
        };
    }

    private Optional<Cutter> cutter() {
        return rows.cutter(making.operation().cutter().value());
    }

    /** Whether the tool alone gives the size: a drill, a reamer, a cutter as wide as its slot. */
    private boolean byTool() {
        return switch (making.operation().kind()) {
            case DRILL, REAM -> true;
            case SLOT, KEYSEAT, WOODRUFF, SAW -> asked.aspect() == Aspect.WIDTH && asWide();
            default -> false;
        };
    }

    private boolean asWide() {
        boolean byTool = asked.feature().got() == GotBy.TOOL;
        return byTool && cutter().filter(row -> Math.abs(over(row)) <= AS_WIDE).isPresent();
    }

    /** A cutter over the nominal size of what it makes. */
    private double over(Cutter row) {
        return row.diameter().inside() - asked.nominal();
    }

    private List<Contributor> tool() {
        Made made = made();
        List<Contributor> all = new ArrayList<>(made.spreads());
        all.add(Contributor.bias(
                        "the tool makes, off the middle of the limits", Math.abs(made.aim() - asked.middle()), COMMON)
                .halvedBy("another size of tool, or measuring and correcting"));
        return all;
    }

    private Made made() {
        double least = rows.holder(making.operation().holder().value())
                .map(holder -> holder.runOutLow().inside())
                .orElse(0.0);
        double most = rows.holder(making.operation().holder().value())
                .map(holder -> holder.runOutHigh().inside())
                .orElse(0.0);
        return switch (making.operation().kind()) {
            case REAM ->
                ToolSize.reamed(
                        asked.size().greatestMm() - asked.nominal(), 2 * asked.half(), floats((least + most) / 2));
            case DRILL -> drilled();
            default -> ToolSize.slot(forKey() + cutter().map(this::width).orElse(0.0), least, most);
        };
    }

    private double width(Cutter row) {
        return asked.feature().kind() == Feature.Kind.WOODRUFF_SEAT ? 0 : over(row);
    }

    private Made drilled() {
        Made made = ToolSize.drilled(asked.nominal());
        return new Made(made.aim() + cutter().map(this::over).orElse(0.0), made.spreads());
    }

    /** A floating holder and a sprung chuck let a reamer follow its hole. */
    private double floats(double runOut) {
        return rows.holder(making.operation().holder().value())
                .filter(holder -> follows(holder.style()))
                .map(holder -> 0.0)
                .orElse(runOut);
    }

    private static boolean follows(Holder.Style style) {
        return switch (style) {
            case FLOATING_REAMER_HOLDER, DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS -> true;
            default -> false;
        };
    }

    /** Cutters for keys are made under size, so that a seat comes within P9. */
    private double forKey() {
        return asked.feature().kind() == Feature.Kind.KEYSEAT ? ToolSize.underForKeys(asked.nominal()) : 0;
    }

    /** A wall wound to: from the datum, or from the opposite wall. */
    private List<Contributor> wall(boolean fromDatum) {
        List<Contributor> all = new ArrayList<>(axis(false).contributors());
        if (fromDatum) {
            all.add(loading.datum().contributor());
            all.add(loading.loading());
        }
        double runOut = rows.holder(making.operation().holder().value())
                .map(holder -> holder.runOutHigh().inside())
                .orElse(0.0);
        if (runOut > 0) {
            all.add(Contributor.oneDirection("run-out of the holder", runOut / 2, Source.of("shop: the holder's row"))
                    .halvedBy("a truer holder"));
        }
        all.addAll(Leaves.of(cut, making.operation().id()));
        return all;
    }
}
