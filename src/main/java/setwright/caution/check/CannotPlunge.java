package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Move;
import setwright.geometry.plane.Point2;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.shop.Cutter;
import setwright.shop.Drill;
import setwright.shop.EndMill;

/** A cutter that does not cut at its centre, fed straight down into the work. */
public final class CannotPlunge implements Check {
    private static final double SAME_PLACE = 0.01;

    @Override
    public String slug() {
        return "cannot-plunge";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.cutterRow().filter(CannotPlunge::open).isPresent())
                .forEach(in -> found.add(in.plan()
                        .part()
                        .operation(in.operation().id())
                        .map(on -> look(in, on))
                        .orElseGet(() -> in.unlooked(slug(), Operations.FOR_ROOM))));
        return found;
    }

    /** Whether its middle does not cut. */
    private static boolean open(Cutter cutter) {
        return switch (cutter.form()) {
            case END_MILL -> !((EndMill) cutter).centreCutting();
            case DRILL -> !((Drill) cutter).cutsInTheFull();
            case FACE_MILL,
                    SHELL_MILL,
                    FLY_CUTTER,
                    SLITTING_SAW,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CORNER_ROUNDER,
                    FORM_CUTTER -> true;
            case SPOT_DRILL, REAMER, TAP, CENTRE_DRILL, COUNTERSINK, COUNTERBORE, BORING_BAR, CHAMFER_MILL, SCRIBER ->
                false;
        };
    }

    private Finding look(Operations.In in, OperationStage on) {
        return plunges(on)
                ? Finding.fails(
                        Caution.Place.of(
                                in.setUp().id(),
                                in.operation().id(),
                                in.operation().cutter().value(),
                                in.cutter()),
                        slug(),
                        Severity.STOP,
                        in.cutter() + " is fed straight down into the work " + in.at()
                                + " and does not cut at its centre. It stands on its core and burns or breaks:"
                                + " drill its entry first, wind it down along the cut, or take a slot drill.")
                : Finding.HOLDS;
    }

    /** Passes after the first come down through what is cut already. */
    private static boolean plunges(OperationStage on) {
        List<Point2> down = new ArrayList<>();
        for (Move move : on.path().moves()) {
            Point2 place = move.plan().from();
            boolean again = move.kind() == Move.Kind.APPROACH
                    && down.stream().anyMatch(before -> before.distance(place) < SAME_PLACE);
            if (!again && intoStock(move, on)) {
                return true;
            }
            if (move.isUpright() && move.zTo() < move.zFrom()) {
                down.add(place);
            }
        }
        return false;
    }

    /** Straight down where its middle meets something; a drilled entry leaves it nothing to meet. */
    private static boolean intoStock(Move move, OperationStage on) {
        return move.isUpright()
                && move.zTo() < move.zFrom()
                && on.before().heightAt(move.plan().from()).orElse(Double.NEGATIVE_INFINITY) > move.zTo();
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.otherCutters(cutter -> !open(cutter)));
        if (!tool.operation().kind().inHole()) {
            all.add(CutChanges.of(plan, caution).method(Operation.Method.WOUND_DOWN));
        }
        all.addAll(tool.cutterToPencil());
        return all;
    }
}
