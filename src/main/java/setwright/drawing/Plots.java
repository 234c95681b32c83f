package setwright.drawing;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.plan.Plan;
import setwright.plan.cut.ForceRound;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.RingingCut;
import setwright.plan.cut.Stability;
import setwright.plan.place.FeatureBudget;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.shop.Machine;

/** Draws the plots of a line of the card; too slow for the event thread. */
public final class Plots {
    private static final int SPEEDS = 200;
    private static final double TITLE_OVER = 6;

    private final Plan plan;
    private final String operation;
    private final Printing printing;

    private Plots(Plan plan, String operation, Printing printing) {
        this.plan = plan;
        this.operation = operation;
        this.printing = printing;
    }

    /**
     * Those that there are, in their order.
     *
     * @param operation id; where there is no such operation, what belongs to the whole job
     */
    public static Map<Plot, Drawing> of(Plan plan, String operation, Printing printing) {
        Plots plots = new Plots(plan, operation, printing);
        Map<Plot, Drawing> found = new EnumMap<>(Plot.class);
        for (Plot plot : Plot.values()) {
            Drawing drawing = plots.draw(plot);
            if (!drawing.isEmpty()) {
                found.put(plot, plots.titled(plot, drawing));
            }
        }
        return found;
    }

    private Drawing draw(Plot plot) {
        return switch (plot) {
            case FORCE -> force();
            case DEPTH_AND_SPEED -> lobes();
            case QUANTITY -> BatchPlot.of(plan.time().setUps(), printing);
            case BUDGET ->
                tightest().map(budget -> BudgetPlot.of(budget, printing)).orElse(Drawing.EMPTY);
        };
    }

    private Drawing titled(Plot plot, Drawing drawing) {
        String of = plot == Plot.BUDGET
                ? tightest().map(budget -> ": " + budget.what()).orElse("")
                : "";
        Point2 over = new Point2(drawing.extent().middle().x(), drawing.extent().yHigh() + TITLE_OVER);
        PlanBox room = drawing.extent().and(PlanBox.of(over, over.plus(new Point2(0, TITLE_OVER))));
        return new Drawing(
                drawing.and(new Mark.Text(over, Mark.Anchor.ABOVE, Mark.Lettering.PLAIN, plot.words() + of))
                        .marks(),
                room);
    }

    private Drawing force() {
        return ForceRound.of(plan.drawnUp(), plan.rows(), plan.part(), operation)
                .map(round -> ForcePlot.of(
                        round.even(),
                        round.runningOut(),
                        printing.of(Measure.FORCE, round.runningOut().largest())))
                .orElse(Drawing.EMPTY);
    }

    private Drawing lobes() {
        return plan.cut()
                .operation(operation)
                .map(OperationCut::stability)
                .filter(Stability::predictable)
                .map(stability -> lobes(stability.question()))
                .orElse(Drawing.EMPTY);
    }

    private Drawing lobes(RingingCut cut) {
        Machine machine = plan.rows().machine();
        double fastest = Math.max(machine.fastest(), cut.speed());
        return LobePlot.of(cut.lobes(machine.slowest(), fastest, SPEEDS), cut.speed(), cut.depth(), printing);
    }

    /** The one of the operation's budgets that takes up most of what is allowed. */
    private Optional<FeatureBudget> tightest() {
        return plan.place().budgets().stream()
                .filter(budget -> budget.operation().equals(operation))
                .max(Comparator.comparingDouble(budget -> budget.decisive() / budget.limit()));
    }
}
