package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.part.KneeUse;
import setwright.plan.part.OperationStage;
import setwright.plan.part.ToolHeights;
import setwright.quantity.Unit;
import setwright.reach.HeightsOfUse;
import setwright.reach.KneeWindow;
import setwright.reach.NoseRange;

/** The nose comes neither low enough for the depth, nor high enough to cross over the work. */
public final class KneeRunsOut implements Check {
    @Override
    public String slug() {
        return "knee-runs-out";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.onItsStage(plan, slug(), this::look);
    }

    /** What an operation asks of the knee, as bad as it is where the machine has not got it. */
    private record Asks(Figure figure, Severity severity, String why) {}

    private Finding look(Operations.In in, OperationStage on) {
        Asks worst = asks(in, on).stream()
                .min(Comparator.comparingDouble(KneeRunsOut::left))
                .orElseThrow();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), "knee", "knee"),
                "Nose over the table for " + in.cutter(),
                worst.figure());
        return worst.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, worst.severity(), message(in, worst));
    }

    private static double left(Asks asks) {
        Figure figure = asks.figure();
        return figure.worseUp() ? figure.limit() - figure.value() : figure.value() - figure.limit();
    }

    private static List<Asks> asks(Operations.In in, OperationStage on) {
        NoseRange machine = KneeUse.range(in.plan().rows().machine());
        HeightsOfUse use = KneeUse.of(
                in.operation().id(),
                in.operation().kind(),
                new ToolHeights(on.workTop(), on.lowest(), on.crossing(), on.projection()));
        double over = KneeWindow.lowestNose(use.crossing(), use.projection());
        boolean meets = over - ToolHeights.CROSSING_OVER > machine.highest();
        double stroke = use.feed() == HeightsOfUse.Feed.QUILL ? machine.quillStroke() : 0;
        double down = KneeWindow.highestNose(use.deepest(), use.projection(), stroke);
        double knee = in.operation().kneeHeight().value().inside();
        return List.of(
                new Asks(
                        Figure.atMost(machine.highest(), over, Unit.MM),
                        meets ? Severity.STOP : Severity.CAUTION,
                        " to cross over the work"),
                new Asks(Figure.atLeast(machine.lowest(), down, Unit.MM), Severity.STOP, " to come to its depth"),
                new Asks(Figure.atMost(machine.highest(), knee, Unit.MM), Severity.STOP, " by its knee height"));
    }

    private static String message(Operations.In in, Asks asks) {
        Words words = new Words(in.plan());
        String limit = asks.figure().worseUp() ? " at most" : " at least";
        String wayOut = asks.figure().worseUp()
                ? ". The tool does not clear what it crosses: take a shorter tool or holder, or lower packing."
                : ". The hole ends short: take a longer tool or holder, or higher packing.";
        return in.cutter() + " " + in.at() + " wants the nose "
                + words.length(asks.figure().value()) + " over the table" + asks.why() + " and the machine has "
                + words.length(asks.figure().limit()) + limit + wayOut;
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        PackingChanges packing = new PackingChanges(plan, caution.setUp());
        Figure figure = caution.figure();
        boolean tooHigh = figure != null && figure.worseUp();
        List<Proposal> all = new ArrayList<>(tool.kneeToPencil());
        if (tooHigh) {
            all.addAll(tool.asShortAsItHolds());
            all.addAll(tool.shorterCutters());
        } else if (figure != null) {
            all.addAll(tool.longer(figure.limit() - figure.value()));
        }
        all.addAll(tool.otherHolders());
        all.addAll(tooHigh ? packing.lower() : packing.higher());
        return all;
    }
}
