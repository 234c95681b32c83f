package setwright.plan.room;

import java.util.Optional;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnOperation;
import setwright.location.FoundAgain;
import setwright.location.budget.AxisErrors;
import setwright.location.budget.DatumWay;
import setwright.plan.Rows;
import setwright.plan.part.DropOuts;
import setwright.plan.part.KneeUse;
import setwright.reach.DropOut;
import setwright.reach.ToolChange;
import setwright.shop.Machine;

/**
 * Where the tool before comes out and the tool of the operation goes in. Where the knee moves between the two in any case
 * it is done at the lower knee of the two; where the table moves in any case, running it aside loses nothing.
 */
record ChangeQuestion(RoomQuestion asked, Rows rows) {
    /** Knee heights that differ by less are one, mm. */
    private static final double SAME_HEIGHT = 0.01;

    /** Holes nearer to each other than this are one, mm. */
    private static final double SAME_PLACE = 0.01;

    /** A tool that has to pass: how far it stands below the nose and comes down from there. */
    private record Passing(String operation, double projection, DropOut dropOut) {
        double takes() {
            return projection + dropOut.length();
        }
    }

    OperationRoom.ChangeRoom answer() {
        if (asked.earlier().filter(before -> before.sameTool(asked.operation())).isPresent()) {
            return OperationRoom.ChangeRoom.STAYS;
        }
        Passing tool = longest();
        ToolChange change = ToolChange.of(
                new ToolChange.Asked(
                        nose(), tool.projection(), highestBelow(), highestAside(), tool.dropOut(), aside(), knee()),
                KneeUse.range(rows.machine()));
        Optional<ToolChange.Room> cheapest = change.cheapest();
        ToolChange.Room room = cheapest.orElseGet(change::roomiest);
        return new OperationRoom.ChangeRoom(
                cheapest.map(one -> one.place().words()).orElse(""),
                room.room(),
                room.needed(),
                room.lost(),
                tool.operation());
    }

    /** Of the tool that comes out and the tool that goes in the one that takes more. */
    private Passing longest() {
        boolean stays = asked.earlier()
                .filter(before -> before.sameHolder(asked.operation()))
                .isPresent();
        Passing in = new Passing(asked.operation().id(), asked.on().projection(), dropOut(asked.operation(), stays));
        return asked.earlier()
                .map(before ->
                        new Passing(before.operation().id(), before.projection(), dropOut(before.operation(), stays)))
                .filter(out -> out.takes() > in.takes())
                .orElse(in);
    }

    private DropOut dropOut(DrawnOperation of, boolean stays) {
        return DropOuts.of(
                stays,
                of,
                rows.cutter(of.cutter().value()).orElseThrow(),
                rows.holder(of.holder().value()).orElseThrow());
    }

    private double nose() {
        double own = height(asked.operation());
        return asked.earlier()
                .map(before -> Math.max(own, height(before.operation())))
                .orElse(own);
    }

    private static double height(DrawnOperation operation) {
        return operation.kneeHeight().value().inside();
    }

    private ToolChange.Lost aside() {
        double back = AxisErrors.of(rows.machine().x(), false).back();
        return new ToolChange.Lost(inOneHole() ? back : 0, 0);
    }

    /** A head on a round column turns as it is moved, so that the place has to be found again. */
    private ToolChange.Lost knee() {
        Machine machine = rows.machine();
        double turned = machine.losesPlace() && inOneHole() ? FoundAgain.error(DatumWay.EDGE_FINDER.halfWidth()) : 0;
        return new ToolChange.Lost(
                turned, atOneHeight() ? AxisErrors.of(machine.knee(), true).back() : 0);
    }

    private boolean inOneHole() {
        Optional<Point2> last = asked.earlier().flatMap(Earlier::last);
        return last.isPresent()
                && !asked.on().spots().isEmpty()
                && last.get().distance(asked.on().spots().get(0)) < SAME_PLACE;
    }

    private boolean atOneHeight() {
        return asked.earlier()
                .filter(before -> Math.abs(height(before.operation()) - height(asked.operation())) < SAME_HEIGHT)
                .isPresent();
    }

    private double highestBelow() {
        return Math.max(asked.on().before().top(), asked.heights().jawTop());
    }

    /** The table where it can be run so far aside that the device is clear of the spindle, else the device. */
    private double highestAside() {
        Machine machine = rows.machine();
        double wide =
                Math.max(machine.noseDiameter().inside() / 2, asked.on().tool().greatestRadius());
        boolean clears = machine.x().travel().inside() / 2 > nearerEnd() + wide;
        return clears ? 0 : highestBelow();
    }

    /** From the middle of the table to the nearer end of what stands on it. */
    private double nearerEnd() {
        double right = 0;
        double left = 0;
        for (var body : asked.fixtures()) {
            if (body.role() != Role.TABLE) {
                Box box = body.solid().box();
                right = Math.max(right, box.plan().xHigh());
                left = Math.max(left, -box.plan().xLow());
            }
        }
        return Math.min(right, left);
    }
}
