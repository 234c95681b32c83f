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
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.reach.ToolChange;

/** A tool that cannot be got in or out: a stop where no change place works, a note where the best of them loses what a tolerance asks. */
public final class NoRoomToChangeTool implements Check {
    /** What the way back may take of a tolerance (common practice). */
    private static final double SHARE = 1.0 / 3;

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
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(
                        in.setUp().id(), in.operation().id(), "change-place", "place where the tool is changed"),
                "Room to change " + tool(in, change).cutter(),
                Figure.atLeast(change.needed(), change.room(), Unit.MM));
        if (!change.works()) {
            return Finding.fails(margin, Severity.STOP, what(in, change) + nowhere(new Words(in.plan()), change));
        }
        return Asked.of(in).stream()
                .filter(asked -> asked.lost(change.lost()) > asked.limit())
                .findFirst()
                .map(asked -> Finding.fails(margin, Severity.NOTE, what(in, change) + elsewhere(in, change, asked)))
                .orElseGet(() -> Finding.holds(margin));
    }

    /** A tolerance of what the operation makes that the way back must not use up. */
    private record Asked(String what, double tolerance, boolean inDepth) {
        static List<Asked> of(Operations.In in) {
            List<Asked> all = new ArrayList<>();
            Holes.of(in.operation(), in.plan().job()).forEach(hole -> {
                Typed<Length> position = hole.position();
                if (position != null) {
                    all.add(new Asked("position of " + Words.called(hole), position.inside(), false));
                }
                Size depth = hole.depth();
                if (depth != null && depth.toleranced()) {
                    all.add(new Asked("depth of " + Words.called(hole), depth.greatestMm() - depth.leastMm(), true));
                }
            });
            return all;
        }

        double lost(ToolChange.Lost lost) {
            return inDepth ? lost.depth() : lost.place();
        }

        double limit() {
            return SHARE * tolerance;
        }
    }

    private static Operations.In tool(Operations.In in, OperationRoom.ChangeRoom change) {
        return change.stays() ? in : in.other(change.operation());
    }

    private static String what(Operations.In in, OperationRoom.ChangeRoom change) {
        Operations.In tool = tool(in, change);
        return tool.cutter() + " in " + new Words(in.plan()).holder(tool.operation()) + " " + in.at();
    }

    private static String elsewhere(Operations.In in, OperationRoom.ChangeRoom change, Asked asked) {
        Words words = new Words(in.plan());
        return " does not come out over the hole: change it " + change.where() + ", where there is "
                + words.length(change.room()) + " for the " + words.length(change.needed())
                + " that it takes. It comes back within " + words.fine(asked.lost(change.lost())) + "; "
                + words.fine(asked.limit()) + " is asked, a third of the tolerance on the " + asked.what()
                + ": come up to the reading from the same side, or find it again by an indicator.";
    }

    private static String nowhere(Words words, OperationRoom.ChangeRoom change) {
        return " cannot be got in or out: " + words.length(change.needed())
                + " has to come down below the nose and the roomiest place leaves "
                + words.length(Math.max(0, change.room()))
                + ": take a shorter tool or holder, or lower packing.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = new ToolChanges(plan, Operations.operation(plan, caution.setUp(), passing(plan, caution)));
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(tool.shorterCutters());
        all.addAll(tool.otherHolders());
        all.addAll(tool.kneeToPencil());
        all.addAll(new PackingChanges(plan, caution.setUp()).lower());
        return all;
    }

    /** The operation whose tool does not pass: the one that goes in, or the one before that comes out. */
    private static String passing(Plan plan, Caution caution) {
        return plan.room()
                .operation(caution.operation())
                .map(OperationRoom::change)
                .filter(change -> !change.stays())
                .map(OperationRoom.ChangeRoom::operation)
                .orElse(caution.operation());
    }
}
