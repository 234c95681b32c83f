package setwright.plan.pencil;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.Keyseat;
import setwright.job.Operation;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.plan.Rows;
import setwright.plan.part.MilledWidth;
import setwright.plan.part.Mouths;
import setwright.shop.ChamferMill;
import setwright.shop.Cutter;
import setwright.shop.DovetailCutter;
import setwright.shop.EndMill;
import setwright.shop.Scriber;
import setwright.shop.ShankForm;
import setwright.shop.ShopRow;
import setwright.shop.SpotDrill;
import setwright.shop.TSlotCutter;

/** The cutter that mills a feature: the largest end mill that goes in, by preference long enough for it. */
final class MillPencil {
    private static final double SAME = 0.01;

    private static final double SAME_ANGLE = StrictMath.toRadians(0.5);

    /** A step or an end is milled by an end mill of at least this size, mm: stout and common (common practice). */
    private static final double STOUT = 12;

    /** An outline is milled by an end mill of at most this size, mm (common practice). */
    private static final double PROFILE_MOST = 20;

    /** So much smaller than a slot is a cutter that cuts its sides one after the other, mm (common practice). */
    private static final double SMALLER = 1;

    /** And so large at least, as a share of the slot (common practice). */
    private static final double THINNEST = 0.6;

    private final Drafting drafting;
    private final CutterPencil owned;

    MillPencil(Drafting drafting) {
        this.drafting = drafting;
        owned = new CutterPencil(drafting);
    }

    String choose(Operation operation) {
        return operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .findFirst()
                .map(feature -> choose(feature, operation.kind()))
                .orElse(Rows.NOTHING);
    }

    /** One that is enough smaller than a toleranced slot to cut its sides one after the other. */
    Optional<String> forBothSides(Operation operation) {
        return operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .findFirst()
                .flatMap(feature -> switch (feature.kind()) {
                    case SLOT -> {
                        Slot slot = (Slot) feature;
                        yield smaller(mm(slot.width()), depth(slot.depth()), !slot.open());
                    }
                    case KEYSEAT -> {
                        Keyseat seat = (Keyseat) feature;
                        yield smaller(mm(seat.width()), mm(seat.depth()), seat.length() != null);
                    }
                    default -> Optional.empty();
                });
    }

    private Optional<String> smaller(double width, double depth, boolean centre) {
        String found = endMill(new Wanted(width - SMALLER, depth, centre));
        return drafting.rows()
                .cutter(found)
                .filter(cutter -> cutter.diameter().inside() >= THINNEST * width)
                .map(Cutter::id);
    }

    private String choose(Feature feature, Operation.Kind kind) {
        return switch (feature.kind()) {
            case SLOT -> {
                Slot slot = (Slot) feature;
                yield endMill(new Wanted(most(slot.width()), depth(slot.depth()), !slot.open()));
            }
            case ARC_SLOT -> {
                ArcSlot slot = (ArcSlot) feature;
                yield endMill(new Wanted(most(slot.width()), depth(slot.depth()), true));
            }
            case KEYSEAT -> {
                Keyseat seat = (Keyseat) feature;
                yield endMill(new Wanted(most(seat.width()), mm(seat.depth()), seat.length() != null));
            }
            case POCKET -> pocket((Pocket) feature);
            case STEP -> {
                Step step = (Step) feature;
                yield smallest(mm(step.width()) / DepthPencil.LANE_SHARE, mm(step.depth()));
            }
            case RADIUS_END -> smallest(0, depth(((RadiusEnd) feature).depth()));
            case PROFILE -> profile((ProfileCut) feature);
            case T_SLOT ->
                kind == Operation.Kind.T_SLOT
                        ? head((TSlot) feature)
                        : endMill(new Wanted(most(((TSlot) feature).neck()), mm(((TSlot) feature).depth()), false));
            case DOVETAIL -> dovetail((Dovetail) feature, kind);
            case CHAMFER -> cone((Chamfer) feature);
            case SLIT, WOODRUFF_SEAT -> new DiscPencil(drafting).choose(feature);
            case DIVIDED -> divided((Divided) feature);
            case FLATS -> smallest(0, mm(((Flats) feature).length()));
            case FACE, HOLE, INCLINED_FACE -> Rows.NOTHING;
        };
    }

    private String divided(Divided divided) {
        return switch (divided.what()) {
            case TEETH -> new DiscPencil(drafting).choose(divided);
            case SPLINES -> {
                Size width = divided.width();
                yield width == null ? Rows.NOTHING : endMill(new Wanted(most(width), mm(divided.depth()), false));
            }
            case GRADUATIONS ->
                owned.owned(Scriber.class)
                        .min(Comparator.comparing(ShopRow::id))
                        .map(ShopRow::id)
                        .orElse(Rows.NOTHING);
            case FLATS -> smallest(0, depth(divided.length()));
            case HOLES -> Rows.NOTHING;
        };
    }

    private String pocket(Pocket pocket) {
        double most = Math.min(2 * pocket.corner().inside(), Math.min(mm(pocket.length()), mm(pocket.width())));
        return endMill(new Wanted(most, depth(pocket.depth()), true));
    }

    private String profile(ProfileCut cut) {
        double corner = MilledWidth.leastInnerRadius(cut);
        Wanted wanted = new Wanted(Math.min(PROFILE_MOST, 2 * corner), depth(cut.depth()), cut.inside());
        return endMill(wanted);
    }

    /** The smallest chamfer mill of its angle that is wide enough; else a spot drill. */
    private String cone(Chamfer chamfer) {
        double included = Math.PI - 2 * chamfer.angle().inside();
        return Stream.<Cutter>concat(owned.owned(ChamferMill.class), owned.owned(SpotDrill.class))
                .filter(tool -> Math.abs(Mouths.coneAngle(tool) - included) < SAME_ANGLE)
                .filter(tool -> tool.diameter().inside() / 2 >= MilledWidth.besideWall(tool) + mm(chamfer.width()))
                .filter(owned::usable)
                .min(Comparator.comparing(Cutter::form, Comparator.comparing(form -> form != Cutter.Form.CHAMFER_MILL))
                        .thenComparingDouble(tool -> tool.diameter().inside())
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private String head(TSlot slot) {
        return owned.owned(TSlotCutter.class)
                .filter(cutter -> cutter.diameter().inside() <= most(slot.headWidth()) + SAME)
                .filter(cutter -> cutter.headWidth().inside() <= mm(slot.headHeight()) + SAME)
                .filter(cutter -> cutter.neckDiameter().inside() < mm(slot.neck()))
                .filter(owned::usable)
                .min(largestFirst())
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private String dovetail(Dovetail tail, Operation.Kind kind) {
        double open = mm(tail.width())
                - 2 * mm(tail.depth()) / StrictMath.tan(tail.angle().inside());
        if (kind != Operation.Kind.DOVETAIL) {
            return endMill(new Wanted(open, mm(tail.depth()), false));
        }
        return owned.owned(DovetailCutter.class)
                .filter(cutter ->
                        Math.abs(cutter.angle().inside() - tail.angle().inside()) < SAME_ANGLE)
                .filter(cutter -> cutter.height().inside() >= mm(tail.depth()) - SAME)
                .filter(cutter -> cutter.diameter().inside() <= mm(tail.width()))
                .filter(owned::usable)
                .min(largestFirst())
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private static Comparator<Cutter> largestFirst() {
        return Comparator.comparingDouble((Cutter cutter) -> -cutter.diameter().inside())
                .thenComparing(ShopRow::id);
    }

    /** The smallest end mill of at least a diameter whose flutes reach; the largest there is where none is so large. */
    private String smallest(double least, double depth) {
        double stout = Math.max(least, STOUT);
        return endMills(new Wanted(Double.POSITIVE_INFINITY, depth, false))
                .min(Comparator.comparing((EndMill mill) -> mill.fluteLength().inside() < depth - SAME)
                        .thenComparing(mill -> mill.diameter().inside() < stout - SAME)
                        .thenComparingDouble(mill -> Math.abs(mill.diameter().inside() - stout))
                        .thenComparing(Cutter::material)
                        .thenComparingDouble(mill -> mill.fluteLength().inside())
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    /**
     * What an end mill has to do.
     *
     * @param most largest diameter that goes in
     * @param depth that its flutes have to reach
     * @param centre whether it has to cut at the centre
     */
    private record Wanted(double most, double depth, boolean centre) {}

    /** The largest; then high-speed steel, centre cutting, the shorter flutes, the row's id. */
    private String endMill(Wanted wanted) {
        return endMills(wanted)
                .min(Comparator.comparing((EndMill mill) -> mill.fluteLength().inside() < wanted.depth() - SAME)
                        .thenComparingDouble(mill -> -mill.diameter().inside())
                        .thenComparing(Cutter::material)
                        .thenComparing(mill -> mill.shankForm() == ShankForm.SCREWED)
                        .thenComparing(mill -> !mill.centreCutting())
                        .thenComparingDouble(mill -> mill.fluteLength().inside())
                        .thenComparing(ShopRow::id))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private Stream<EndMill> endMills(Wanted wanted) {
        return owned.owned(EndMill.class)
                .filter(mill -> mill.diameter().inside() <= wanted.most() + SAME)
                .filter(mill -> mill.centreCutting() || !wanted.centre())
                .filter(owned::usable);
    }

    /** The largest cutter that a width takes: its nominal size where that is within its limits, else its least. */
    private static double most(Size width) {
        return Math.min(width.nominal().inside(), width.greatestMm());
    }

    private static double mm(Size size) {
        return size.nominal().inside();
    }

    private double depth(@Nullable Size depth) {
        return Optional.ofNullable(depth)
                .map(size -> size.nominal().inside())
                .orElse(drafting.block().height().nominal().inside());
    }
}
