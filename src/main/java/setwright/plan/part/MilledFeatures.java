package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.geometry.Solid;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.InclinedFace;
import setwright.job.Job;
import setwright.job.Keyseat;
import setwright.job.Operation;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.quantity.Typed;
import setwright.shop.CornerRounder;
import setwright.shop.Cutter;

/**
 * Says for each feature that an operation mills how deep it goes and where the cutter's axis runs.
 *
 * @param side that is up; places on it count from its middle
 */
record MilledFeatures(SideOnTable side, Laid laid, DrawnOperation operation, Cutter tool, Heights heights, Job job) {
    static MilledFeatures of(DrawnSetUp setUp, DrawnOperation operation, Cutter tool, Heights heights, Job job) {
        return new MilledFeatures(SideOnTable.of(setUp, heights, job), Laid.of(setUp), operation, tool, heights, job);
    }

    List<Feature> all() {
        return of(operation, job);
    }

    /** The features of the job that an operation names, in its order. */
    static List<Feature> of(DrawnOperation operation, Job job) {
        return operation.features().stream()
                .flatMap(id -> job.plan().features().stream()
                        .filter(feature -> feature.id().equals(id)))
                .toList();
    }

    /** Whether it cuts a face over the whole side. */
    boolean facesAll() {
        List<Feature> all = all();
        return operation.kind() == Operation.Kind.FACE
                && (all.isEmpty() || all.stream().anyMatch(feature -> feature.kind() == Feature.Kind.FACE));
    }

    /** Height of a feature's floor over the table; empty where this operation does not come at it. */
    Optional<Double> floor(Feature feature) {
        return switch (feature.kind()) {
            case SLIT, WOODRUFF_SEAT -> level().floor(feature);
            case FLATS -> flats((Flats) feature);
            case DIVIDED -> divided((Divided) feature);
            case CHAMFER ->
                tool instanceof CornerRounder rounder
                        ? Optional.of(heights.finishedTop() - rounder.radius().inside())
                        : MilledDepth.floor(feature, heights);
            case INCLINED_FACE -> InclinedLevel.of((InclinedFace) feature, laid, heights, Extent.square(job, laid));
            default -> MilledDepth.floor(feature, heights);
        };
    }

    private Optional<Double> divided(Divided divided) {
        boolean lies = RoundAxis.lies(laid, divided.side());
        return switch (divided.what()) {
            case TEETH -> level().floor(divided);
            case SPLINES -> lies ? Optional.of(bottom(divided)) : Optional.empty();
            case FLATS -> lies ? Optional.of(bottom(divided)) : standing(divided.side(), divided.length());
            case GRADUATIONS -> divided.side() == laid.up() ? MilledDepth.floor(divided, heights) : Optional.empty();
            case HOLES -> Optional.empty();
        };
    }

    private double bottom(Divided divided) {
        return RoundAxis.axis(heights) + mm(divided.diameter()) / 2 - mm(divided.depth());
    }

    private Optional<Double> flats(Flats flats) {
        return RoundAxis.lies(laid, flats.side())
                ? Optional.of(RoundAxis.flat(flats, heights))
                : standing(flats.side(), flats.length());
    }

    /** Flats round an axis that stands go down from the top; without a length through. */
    private Optional<Double> standing(Side axis, @Nullable Size length) {
        if (axis != laid.up()) {
            return Optional.empty();
        }
        return Optional.of(length == null ? heights.partBottom() : heights.finishedTop() - mm(length));
    }

    private LevelFeatures level() {
        return new LevelFeatures(laid, heights, operation, tool);
    }

    /** On the table; empty where this operation does not come at the feature. */
    Optional<Cut> way(Feature feature) {
        return switch (feature.kind()) {
            case SLIT, WOODRUFF_SEAT -> level().way(feature);
            case DIVIDED ->
                ((Divided) feature).what() == Divided.What.TEETH ? level().way(feature) : fromAbove(feature);
            default -> fromAbove(feature);
        };
    }

    /** The height at which an inclined face is level; empty where none is cut. */
    Optional<Double> inclined() {
        return all().stream()
                .filter(feature -> feature.kind() == Feature.Kind.INCLINED_FACE)
                .findFirst()
                .flatMap(this::floor);
    }

    /** What slopes, besides what stands upright. */
    List<Solid> bevels(Feature feature) {
        Bevels bevels = new Bevels(side, heights.finishedTop());
        return switch (operation.kind()) {
            case CHAMFER ->
                feature.kind() == Feature.Kind.CHAMFER && !(tool instanceof CornerRounder)
                        ? bevels.chamfer((Chamfer) feature, job)
                        : List.of();
            case DOVETAIL -> feature.kind() == Feature.Kind.DOVETAIL ? bevels.dovetail((Dovetail) feature) : List.of();
            default -> List.of();
        };
    }

    private Optional<Cut> fromAbove(Feature feature) {
        double asked = Math.max(operation.depth().value().inside(), 0.01);
        double pass = operation.kind() == Operation.Kind.T_SLOT
                ? Math.min(asked, tool.fluteLength().inside())
                : asked;
        return floor(feature).map(floor -> new Cut(lanes(feature).mapped(side.onTable()), floor, pass));
    }

    private Milled lanes(Feature feature) {
        SlotFeatures slots = new SlotFeatures(side, cutter(), climb());
        return switch (feature.kind()) {
            case SLOT -> slots.slot((Slot) feature);
            case ARC_SLOT -> slots.arc((ArcSlot) feature);
            case KEYSEAT -> slots.keyseat((Keyseat) feature);
            case T_SLOT -> slots.tSlot((TSlot) feature, operation.kind() == Operation.Kind.T_SLOT);
            case DOVETAIL -> slots.dovetail((Dovetail) feature, operation.kind() == Operation.Kind.DOVETAIL);
            case POCKET -> pocket((Pocket) feature);
            case STEP -> step((Step) feature);
            case RADIUS_END -> {
                RadiusEnd end = (RadiusEnd) feature;
                yield edges().roundedEnd(end.edge(), mm(end.radius()));
            }
            case PROFILE -> profile((ProfileCut) feature);
            case CHAMFER -> new ChamferWay(side, tool, job, climb()).of((Chamfer) feature);
            case FLATS -> {
                Flats flats = (Flats) feature;
                yield flats.side() == laid.up()
                        ? new StandingFlats(side, cutter(), climb())
                                .milled(Point2.ORIGIN, flats.count(), apothem(flats))
                        : flat(flats.side(), flats.length());
            }
            case DIVIDED -> lanes((Divided) feature, slots);
            case FACE, HOLE, WOODRUFF_SEAT, SLIT, INCLINED_FACE -> Milled.NOTHING;
        };
    }

    private Milled lanes(Divided divided, SlotFeatures slots) {
        return switch (divided.what()) {
            case SPLINES -> slots.spline(divided, RoundAxis.toward(laid.up(), divided.side()));
            case FLATS ->
                divided.side() == laid.up()
                        ? new StandingFlats(side, cutter(), climb())
                                .milled(
                                        side.place(divided.axis()),
                                        divided.count(),
                                        mm(divided.diameter()) / 2 - mm(divided.depth()))
                        : flat(divided.side(), divided.length()).notGone();
            case GRADUATIONS -> Scribed.way(divided, side);
            case TEETH, HOLES -> Milled.NOTHING;
        };
    }

    private double apothem(Flats flats) {
        double across = mm(flats.across());
        return flats.count() % 2 == 0 ? across / 2 : across - Math.min(side.sizeU(), side.sizeV()) / 2;
    }

    /** Across the work from its end; without a length all along it. */
    private Milled flat(Side axis, @Nullable Size length) {
        Edge end = RoundAxis.toward(laid.up(), axis);
        double whole = end == Edge.LEFT || end == Edge.RIGHT ? side.sizeU() : side.sizeV();
        return edges().step(end, length == null ? whole : mm(length), Double.POSITIVE_INFINITY, width());
    }

    private double cutter() {
        return tool.diameter().inside();
    }

    private EdgeWay edges() {
        return new EdgeWay(side, cutter(), climb());
    }

    private boolean climb() {
        return operation.direction().value() == Operation.Direction.CLIMB;
    }

    private double width() {
        return Math.max(0.01, Math.min(cutter(), operation.width().value().inside()));
    }

    private Milled pocket(Pocket pocket) {
        return new PocketWay(
                        mm(pocket.length()), mm(pocket.width()), pocket.corner().inside(), cutter(), width(), climb())
                .milled()
                .mapped(side.set(pocket.place()));
    }

    private Milled step(Step step) {
        Size length = step.length();
        double along = length == null ? Double.POSITIVE_INFINITY : mm(length);
        return edges().step(step.edge(), mm(step.width()), along, width());
    }

    private Milled profile(ProfileCut cut) {
        Rounded outline = outline(cut).mapped(PlanMap.shift(-side.sizeU() / 2, -side.sizeV() / 2));
        return outline.corners().size() < 3 ? Milled.NOTHING : edges().round(outline, cut.inside());
    }

    /** The outline of a profile, from the lower left corner of the side. */
    static Rounded outline(ProfileCut cut) {
        return new Rounded(cut.corners().stream()
                        .map(corner -> new Rounded.Corner(
                                new Point2(corner.u().inside(), corner.v().inside()),
                                Optional.ofNullable(corner.radius())
                                        .map(Typed::inside)
                                        .orElse(0.0)))
                        .toList())
                .anticlockwise();
    }

    static double mm(Size size) {
        return size.nominal().inside();
    }
}
