package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Dovetail;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
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
import setwright.shop.Cutter;

/** Says for each feature that an operation mills where the cutter's axis runs; places on the side, from its middle. */
record MilledFeatures(SideOnTable side, DrawnOperation operation, Cutter tool) {
    /** The features of the job that an operation names, in its order. */
    static List<Feature> of(DrawnOperation operation, Job job) {
        return operation.features().stream()
                .flatMap(id -> job.plan().features().stream()
                        .filter(feature -> feature.id().equals(id)))
                .toList();
    }

    Milled way(Feature feature) {
        SlotFeatures slots = new SlotFeatures(side, cutter());
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
            case CHAMFER -> chamfer((Chamfer) feature);
            case FACE, HOLE, WOODRUFF_SEAT, FLATS, SLIT, INCLINED_FACE, DIVIDED -> Milled.NOTHING;
        };
    }

    /** Round the outline of the side; the edges of a feature are not worked out. */
    private Milled chamfer(Chamfer chamfer) {
        if (!chamfer.of().equals(Chamfer.OUTLINE)) {
            return Milled.NOTHING;
        }
        double axis = MilledWidth.besideWall(tool);
        Lane round = new Lane(
                Rounded.rectangle(side.sizeU(), side.sizeV(), 0).offset(axis).edges(), false);
        return new Milled(List.of(climb() ? round.reversed() : round), Region.NONE);
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
