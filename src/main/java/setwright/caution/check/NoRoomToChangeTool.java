package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;
import setwright.reach.ToolChange;

/** A tool that cannot be got in or out: a stop only where no change place works, else a note naming the cheapest. */
public final class NoRoomToChangeTool implements Check {
    private static final String OVER_THE_HOLE = ToolChange.Place.OVER_THE_HOLE.words();

    @Override
    public String slug() {
        return "no-room-to-change-tool";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsRoom(plan, slug(), this::look);
    }

    private Finding look(Operations.In in, OperationRoom room) {
        OperationRoom.ChangeRoom change = room.change();
        Words words = new Words(in.plan());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(
                        in.setUp().id(), in.operation().id(), "change-place", "place where the tool is changed"),
                "Room to change " + words.cutter(in.operation()),
                Figure.atLeast(change.needed(), change.room(), Unit.MM));
        if (change.where().equals(OVER_THE_HOLE)) {
            return Finding.holds(margin);
        }
        String tool = words.cutter(in.operation()) + " in " + words.holder(in.operation()) + " " + in.at();
        return change.works()
                ? Finding.fails(margin, Severity.NOTE, tool + elsewhere(words, change))
                : Finding.fails(margin, Severity.STOP, tool + nowhere(words, change));
    }

    private static String elsewhere(Words words, OperationRoom.ChangeRoom change) {
        return " does not come out over the work: change it " + change.where() + ", where there is "
                + words.length(change.room()) + " for the " + words.length(change.needed()) + " that it takes.";
    }

    private static String nowhere(Words words, OperationRoom.ChangeRoom change) {
        return " cannot be got in or out: " + words.length(change.needed())
                + " has to come down below the nose and the roomiest place leaves "
                + words.length(Math.max(0, change.room()))
                + ". Take a shorter tool or holder, or lower packing.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(tool.otherHolders());
        all.addAll(tool.kneeToPencil());
        all.addAll(new PackingChanges(plan, caution.setUp()).lower());
        return all;
    }
}
