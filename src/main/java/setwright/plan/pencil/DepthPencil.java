package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.Hole;
import setwright.job.InclinedFace;
import setwright.job.Operation;
import setwright.job.ProfileCut;
import setwright.job.Size;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.plan.cut.CutPlace;
import setwright.plan.part.Heights;
import setwright.plan.part.HoleDepths;
import setwright.plan.part.MadeFrom;
import setwright.plan.part.MilledDepth;
import setwright.plan.part.MilledWidth;
import setwright.plan.part.Mouths;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.reach.BlindTap;
import setwright.reach.ThroughDepth;
import setwright.shop.Cutter;
import setwright.shop.SpotDrill;
import setwright.shop.Tap;

/** Depth and width of one pass; in a hole the depth of full diameter. */
final class DepthPencil {
    /** Widest pass as a share of the cutter's diameter, where the cutter does not cover what it cuts (common practice). */
    static final double LANE_SHARE = 0.75;

    /** Least that has to stay under a blind hole's full diameter, mm (common practice). */
    private static final double FLOOR = 2;

    /** And under its point, mm (common practice). */
    private static final double UNDER_POINT = 0.5;

    /** Threads of lead that are counted on where the shop has no tap. */
    private static final int USUAL_LEAD = 4;

    private final Drafting drafting;

    DepthPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    Typed<Length> depth(Operation operation, Cutter cutter, Heights heights) {
        return switch (operation.kind()) {
            case SPOT -> drafting.length(spotDepth(operation, cutter));
            case FACE, STEP, PROFILE, POCKET, SLOT, KEYSEAT -> pass(place(operation, heights, true), 1);
            case T_SLOT, DOVETAIL, CHAMFER -> drafting.length(undercut(operation));
            case WOODRUFF, SAW, FORM -> drafting.length(cutter.fluteLength().inside());
            case SCRIBE -> drafting.length(undercut(operation));
            case COUNTERBORE, SPOTFACE, COUNTERSINK -> drafting.length(mouthDepth(operation, cutter));
            case DRILL, BORE, REAM, TAP -> drafting.length(holeDepth(operation, heights));
        };
    }

    private boolean standing(Operation operation) {
        return first(operation)
                .filter(feature -> MadeFrom.standingFlats(feature, drafting.job()))
                .isPresent();
    }

    private double flatFloor(Operation operation, Heights heights) {
        return first(operation)
                .map(feature -> switch (feature.kind()) {
                    case FLATS -> heights.finishedTop() - mm(((Flats) feature).length());
                    default -> {
                        Size length = ((Divided) feature).length();
                        yield length == null ? heights.partBottom() : heights.finishedTop() - mm(length);
                    }
                })
                .orElse(heights.partBottom());
    }

    /** What stands outside a flat round a standing axis, square to it. */
    private double outsideFlat(Operation operation, Heights heights) {
        double round = Math.min(heights.length(), heights.depth());
        return first(operation)
                .map(feature -> switch (feature.kind()) {
                    case FLATS -> {
                        double across = mm(((Flats) feature).across());
                        yield ((Flats) feature).count() % 2 == 0 ? (round - across) / 2 : round - across;
                    }
                    case DIVIDED -> mm(((Divided) feature).depth());
                    default -> 0.0;
                })
                .orElse(0.0);
    }

    /** One of so many passes of equal depth. */
    Typed<Length> pass(CutPlace place, int passes) {
        return drafting.length(Math.max(0.1, drafting.roundedUp(place.depth() / passes)));
    }

    /** From where it starts, the face where it was milled before, down to the deepest floor. */
    CutPlace place(Operation operation, Heights heights, boolean faced) {
        if (operation.kind() == Operation.Kind.FACE) {
            if (standing(operation)) {
                return CutPlace.solid(heights.finishedTop(), flatFloor(operation, heights));
            }
            double finished = heights.finishedTop();
            return CutPlace.solid(finished + allowance(operation, heights), finished);
        }
        double top = faced ? heights.finishedTop() : heights.startTop();
        double lowest = operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .flatMap(feature -> MilledDepth.floor(feature, heights).stream())
                .mapToDouble(floor -> Math.min(floor, top))
                .min()
                .orElse(top);
        return CutPlace.solid(top, lowest);
    }

    /** What stands over the finished face, the flat or the inclined face. */
    private double allowance(Operation operation, Heights heights) {
        double facing = heights.startTop() - heights.finishedTop();
        return operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .mapToDouble(feature -> switch (feature.kind()) {
                    case FLATS -> MilledDepth.overFlat((Flats) feature, heights);
                    case DIVIDED -> mm(((Divided) feature).depth());
                    case INCLINED_FACE -> MilledDepth.overIncline((InclinedFace) feature, drafting.block());
                    default -> facing;
                })
                .max()
                .orElse(facing);
    }

    private double mouthDepth(Operation operation, Cutter cutter) {
        return operation.features().stream()
                .flatMap(id -> drafting.hole(id).stream())
                .mapToDouble(hole -> Mouths.depth(operation.kind(), cutter, hole))
                .max()
                .orElse(0);
    }

    /** What stands over the floor of an undercut: the height of the head, or the depth of the flanks. */
    private double undercut(Operation operation) {
        return first(operation)
                .map(feature -> switch (feature.kind()) {
                    case T_SLOT -> mm(((TSlot) feature).headHeight());
                    case DOVETAIL -> mm(((Dovetail) feature).depth());
                    case CHAMFER -> MilledDepth.chamfer((Chamfer) feature);
                    case DIVIDED -> mm(((Divided) feature).depth());
                    default -> 0.0;
                })
                .orElse(0.0);
    }

    /** Of what the first feature asks, in lanes of equal width. */
    private double widest(Operation operation, double diameter) {
        return first(operation)
                .map(feature -> switch (feature.kind()) {
                    case STEP -> lane(mm(((Step) feature).width()), diameter);
                    case POCKET -> drafting.roundedUp(LANE_SHARE * diameter);
                    case CHAMFER -> mm(((Chamfer) feature).width());
                    case PROFILE ->
                        Math.min(
                                diameter,
                                drafting.roundedUp(MilledWidth.outside((ProfileCut) feature, drafting.block())));
                    case DOVETAIL ->
                        Math.min(
                                diameter,
                                drafting.roundedUp(mm(((Dovetail) feature).depth())
                                        / StrictMath.tan(
                                                ((Dovetail) feature).angle().inside())));
                    default -> diameter;
                })
                .orElse(diameter);
    }

    private double lane(double width, double diameter) {
        return drafting.roundedUp(width / Math.ceil(width / (LANE_SHARE * diameter) - 1e-9));
    }

    private Optional<Feature> first(Operation operation) {
        return operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .findFirst();
    }

    private static double mm(Size size) {
        return size.nominal().inside();
    }

    private double spotDepth(Operation operation, Cutter cutter) {
        return cutter instanceof SpotDrill spot
                ? operation.features().stream()
                        .map(drafting::hole)
                        .flatMap(Optional::stream)
                        .mapToDouble(hole -> HoleDepths.spot(hole, spot))
                        .max()
                        .orElse(0)
                : 0;
    }

    Typed<Length> width(Operation operation, Cutter cutter, Heights heights) {
        double diameter = cutter.diameter().inside();
        return switch (operation.kind()) {
            case FACE -> {
                if (standing(operation)) {
                    yield drafting.length(drafting.roundedUp(outsideFlat(operation, heights)));
                }
                double lanes = Math.ceil(heights.depth() / diameter - 1e-9);
                double wide = lanes <= 1 ? 1 : Math.ceil(heights.depth() / (LANE_SHARE * diameter));
                yield drafting.length(drafting.roundedUp(heights.depth() / wide));
            }
            case STEP, PROFILE, POCKET, DOVETAIL, CHAMFER -> drafting.length(widest(operation, diameter));
            case SLOT,
                    KEYSEAT,
                    T_SLOT,
                    WOODRUFF,
                    SAW,
                    FORM,
                    SCRIBE,
                    SPOT,
                    DRILL,
                    BORE,
                    REAM,
                    COUNTERBORE,
                    SPOTFACE,
                    COUNTERSINK,
                    TAP -> drafting.length(diameter);
        };
    }

    private double holeDepth(Operation operation, Heights heights) {
        double thickness = heights.finishedTop() - heights.partBottom();
        return operation.features().stream()
                .map(drafting::hole)
                .flatMap(Optional::stream)
                .mapToDouble(hole -> full(operation, hole, thickness))
                .max()
                .orElse(thickness);
    }

    private double full(Operation operation, Hole hole, double thickness) {
        if (hole.depth() == null) {
            return thickness;
        }
        double asked = hole.depth().nominal().inside();
        boolean beforeTap = operation.kind() == Operation.Kind.DRILL && hole.make() == Hole.Make.TAPPED;
        return beforeTap ? Math.max(asked, Math.min(thickness - floor(hole), drilledBeforeTap(hole, asked))) : asked;
    }

    /** The point of the drill stays in the part too. */
    private double floor(Hole hole) {
        double point = drafting.rows()
                .cutter(new CutterPencil(drafting).drilling(hole))
                .map(drill -> ThroughDepth.pointLength(drill.diameter().inside(), drill.tipAngle()))
                .orElse(0.0);
        return Math.max(FLOOR, point + UNDER_POINT);
    }

    /** Room for the tap that the pencil takes, and a diameter for its chips. */
    private double drilledBeforeTap(Hole hole, double asked) {
        ScrewThread thread = Threads.listed().read(String.valueOf(hole.thread()));
        int lead = drafting.rows()
                .cutter(new CutterPencil(drafting).tapping(hole))
                .map(tap -> ((Tap) tap).leadThreads())
                .orElse(USUAL_LEAD);
        return new BlindTap(asked, lead, thread.pitch(), thread.major() + runsOn(hole, thread.pitch())).drillDepth();
    }

    /** A pitch more where the tap would be run under power. */
    private double runsOn(Hole hole, double pitch) {
        Operation tapped = Operation.pencilled("", Operation.Kind.TAP, List.of(hole.id()));
        Optional<Cutter> tap = drafting.rows().cutter(new CutterPencil(drafting).tapping(hole));
        return new MethodPencil(drafting).choose(tapped, tap).byHand() ? 0 : pitch;
    }
}
