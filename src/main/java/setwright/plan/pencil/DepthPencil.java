package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.job.Chamfer;
import setwright.job.Dovetail;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.ProfileCut;
import setwright.job.Size;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.plan.part.Heights;
import setwright.plan.part.HoleDepths;
import setwright.plan.part.MilledDepth;
import setwright.plan.part.MilledWidth;
import setwright.plan.part.Mouths;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.reach.BlindTap;
import setwright.shop.Cutter;
import setwright.shop.SpotDrill;
import setwright.shop.Tap;

/** Depth and width of one pass; in a hole the depth of full diameter. */
final class DepthPencil {
    /** Deepest facing pass that the pencil takes, mm (common practice for manual mills). */
    private static final double FACE_MILL_PASS = 2;

    private static final double END_MILL_PASS_SHARE = 0.25;

    /** Deepest pass of an end mill in the full, as a share of its diameter (common practice for manual mills). */
    private static final double SLOT_PASS_SHARE = 0.5;

    /** Widest pass as a share of the cutter's diameter, where the cutter does not cover what it cuts (common practice). */
    static final double LANE_SHARE = 0.75;

    /** Least that has to stay under a blind hole's full diameter, mm (common practice). */
    private static final double FLOOR = 2;

    /** Threads of lead that are counted on where the shop has no tap. */
    private static final int USUAL_LEAD = 4;

    private final Drafting drafting;

    DepthPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    Typed<Length> depth(Operation operation, Cutter cutter, Heights heights) {
        return switch (operation.kind()) {
            case FACE -> drafting.length(facingPass(cutter, heights.startTop() - heights.finishedTop()));
            case SPOT -> drafting.length(spotDepth(operation, cutter));
            case STEP, PROFILE, POCKET, SLOT, KEYSEAT -> drafting.length(millingPass(operation, cutter, heights));
            case T_SLOT, DOVETAIL, CHAMFER -> drafting.length(undercut(operation));
            case WOODRUFF, SAW, FORM, SCRIBE -> drafting.length(0);
            case COUNTERBORE, SPOTFACE, COUNTERSINK -> drafting.length(mouthDepth(operation, cutter));
            case DRILL, BORE, REAM, TAP -> drafting.length(holeDepth(operation, heights));
        };
    }

    /** Down to the deepest floor in passes of equal depth, none deeper than the cutter's share. */
    private double millingPass(Operation operation, Cutter cutter, Heights heights) {
        double whole = operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .flatMap(feature -> MilledDepth.floor(feature, heights).stream())
                .mapToDouble(floor -> heights.finishedTop() - floor)
                .max()
                .orElse(0);
        double passes = Math.max(
                1, Math.ceil(whole / (SLOT_PASS_SHARE * cutter.diameter().inside()) - 1e-9));
        return Math.max(0.1, drafting.roundedUp(whole / passes));
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

    private double facingPass(Cutter cutter, double allowance) {
        double deepest = switch (cutter.form()) {
            case END_MILL -> END_MILL_PASS_SHARE * cutter.diameter().inside();
            default -> FACE_MILL_PASS;
        };
        double passes = Math.max(1, Math.ceil(allowance / deepest - 1e-9));
        return Math.max(0.1, drafting.roundedUp(allowance / passes));
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
        return beforeTap ? Math.min(thickness - FLOOR, drilledBeforeTap(hole, asked)) : asked;
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
