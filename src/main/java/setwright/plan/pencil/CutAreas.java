package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.job.ArcSlot;
import setwright.job.Corner;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Keyseat;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.job.WoodruffSeat;
import setwright.plan.part.HolePlaces;
import setwright.plan.part.Lying;

/**
 * Where the features of a side are cut, each as the box around it in plan, from the middle of the part along the table
 * and to the column, mm. Broken edges count as done off the machine.
 */
record CutAreas(Lying lying) {
    /** The boxes of all features that pass. */
    List<PlanBox> of(List<Feature> features, Predicate<Feature> which) {
        List<PlanBox> found = new ArrayList<>();
        features.stream().filter(which).forEach(feature -> found.addAll(of(feature)));
        return found.stream().map(this::turned).toList();
    }

    /** Whether a feature goes through the part. */
    static boolean through(Feature feature) {
        return switch (feature.kind()) {
            case HOLE -> ((Hole) feature).through();
            case SLOT -> ((Slot) feature).depth() == null;
            case ARC_SLOT -> ((ArcSlot) feature).depth() == null;
            case POCKET -> ((Pocket) feature).depth() == null;
            case PROFILE -> ((ProfileCut) feature).depth() == null;
            case RADIUS_END -> ((RadiusEnd) feature).depth() == null;
            case SLIT -> ((Slit) feature).depth() == null;
            case DIVIDED -> ((Divided) feature).what() == Divided.What.HOLES;
            case FACE, STEP, KEYSEAT, WOODRUFF_SEAT, T_SLOT, DOVETAIL, FLATS, CHAMFER, INCLINED_FACE -> false;
        };
    }

    private List<PlanBox> of(Feature feature) {
        return switch (feature.kind()) {
            case FACE, INCLINED_FACE, FLATS -> List.of(whole());
            case CHAMFER -> List.of();
            case STEP -> List.of(strip(((Step) feature).edge(), ((Step) feature).width()));
            case RADIUS_END -> List.of(strip(((RadiusEnd) feature).edge(), ((RadiusEnd) feature).radius()));
            case PROFILE -> List.of(profile((ProfileCut) feature));
            case HOLE -> holes((Hole) feature);
            case SLOT -> bar(((Slot) feature).place(), ((Slot) feature).length(), ((Slot) feature).width());
            case POCKET -> bar(((Pocket) feature).place(), ((Pocket) feature).length(), ((Pocket) feature).width());
            case KEYSEAT -> bar(((Keyseat) feature).place(), ((Keyseat) feature).length(), ((Keyseat) feature).width());
            case WOODRUFF_SEAT ->
                bar(
                        ((WoodruffSeat) feature).place(),
                        ((WoodruffSeat) feature).cutter(),
                        ((WoodruffSeat) feature).width());
            case T_SLOT -> bar(((TSlot) feature).place(), ((TSlot) feature).length(), ((TSlot) feature).headWidth());
            case DOVETAIL -> bar(((Dovetail) feature).place(), null, ((Dovetail) feature).width());
            case SLIT -> bar(((Slit) feature).place(), ((Slit) feature).length(), ((Slit) feature).width());
            case ARC_SLOT -> List.of(arc((ArcSlot) feature));
            case DIVIDED -> List.of(around(((Divided) feature).axis(), mm(((Divided) feature).diameter()) / 2));
        };
    }

    private PlanBox whole() {
        return PlanBox.of(new Point2(-u() / 2, -v() / 2), new Point2(u() / 2, v() / 2));
    }

    private PlanBox strip(Edge edge, Size width) {
        PlanBox whole = whole();
        double wide = mm(width);
        return switch (edge) {
            case LEFT -> new PlanBox(whole.xLow(), whole.yLow(), whole.xLow() + wide, whole.yHigh());
            case RIGHT -> new PlanBox(whole.xHigh() - wide, whole.yLow(), whole.xHigh(), whole.yHigh());
            case LOW -> new PlanBox(whole.xLow(), whole.yLow(), whole.xHigh(), whole.yLow() + wide);
            case HIGH -> new PlanBox(whole.xLow(), whole.yHigh() - wide, whole.xHigh(), whole.yHigh());
        };
    }

    private PlanBox profile(ProfileCut cut) {
        if (!cut.inside()) {
            return whole();
        }
        PlanBox box = PlanBox.EMPTY;
        for (Corner corner : cut.corners()) {
            box = box.and(new Point2(corner.u().inside() - u() / 2, corner.v().inside() - v() / 2));
        }
        return box;
    }

    private List<PlanBox> holes(Hole hole) {
        double widest = hole.mouth() == null
                ? mm(hole.size())
                : Math.max(mm(hole.size()), mm(hole.mouth().diameter()));
        return HolePlaces.fromMiddle(hole, u(), v(), 0).stream()
                .map(place -> PlanBox.of(place, place).grown(widest / 2))
                .toList();
    }

    /** A bar about its middle; without a length from side to side. */
    private List<PlanBox> bar(Placed place, @Nullable Size length, Size width) {
        double reach = length == null ? 2 * (u() + v()) : mm(length);
        double angle = place.angle() == null ? 0 : place.angle().inside();
        double cosine = Math.abs(StrictMath.cos(angle));
        double sine = Math.abs(StrictMath.sin(angle));
        Point2 half = new Point2(reach * cosine + mm(width) * sine, reach * sine + mm(width) * cosine).times(0.5);
        Point2 middle = middle(place);
        return List.of(PlanBox.of(middle.minus(half), middle.plus(half)));
    }

    private PlanBox arc(ArcSlot slot) {
        return around(slot.centre(), slot.radius().inside() + mm(slot.width()) / 2);
    }

    private PlanBox around(Placed place, double radius) {
        Point2 middle = middle(place);
        return PlanBox.of(middle, middle).grown(radius);
    }

    private Point2 middle(Placed place) {
        return switch (place.from()) {
            case CENTRE -> at(place, 0, 0, 1, 1);
            case LEFT_LOW -> at(place, -1, -1, 1, 1);
            case RIGHT_LOW -> at(place, 1, -1, -1, 1);
            case LEFT_HIGH -> at(place, -1, 1, 1, -1);
            case RIGHT_HIGH -> at(place, 1, 1, -1, -1);
        };
    }

    private Point2 at(Placed place, int side, int end, int right, int up) {
        return new Point2(
                side * u() / 2 + right * place.u().inside(),
                end * v() / 2 + up * place.v().inside());
    }

    private PlanBox turned(PlanBox box) {
        return PlanBox.of(turned(box.xLow(), box.yLow()), turned(box.xHigh(), box.yHigh()));
    }

    private Point2 turned(double x, double y) {
        return switch (Math.floorMod(lying.quarterTurns(), 4)) {
            case 1 -> new Point2(-y, x);
            case 2 -> new Point2(-x, -y);
            case 3 -> new Point2(y, -x);
            default -> new Point2(x, y);
        };
    }

    /** Length of the side along its own u, before it was turned. */
    private double u() {
        return mm(lying.quarterTurns() % 2 != 0 ? lying.across() : lying.along());
    }

    private double v() {
        return mm(lying.quarterTurns() % 2 != 0 ? lying.along() : lying.across());
    }

    private static double mm(Size size) {
        return size.nominal().inside();
    }
}
