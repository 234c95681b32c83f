package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.cutting.Reaming;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.quantity.Band;
import setwright.quantity.Unit;
import setwright.shop.Cutter;

/** Too little or too much left for the reamer. */
public final class ReamAllowance implements Check {
    /** Off the chart by this share of it is said. */
    private static final double OFF_BY = 0.5;

    @Override
    public String slug() {
        return "ream-allowance";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.REAM)
                .map(this::look)
                .toList();
    }

    private Finding look(Operations.In in) {
        Optional<OperationStage> on = in.plan().part().operation(in.operation().id());
        Optional<Cutter> reamer = in.cutterRow();
        if (on.isEmpty() || reamer.isEmpty()) {
            return in.unlooked(slug(), Operations.FOR_ROOM);
        }
        double size = reamer.get().diameter().inside();
        double left = size - on.get().holeBefore().orElse(0.0);
        Band chart = Reaming.stock(size);
        boolean little = left < chart.low();
        Figure figure = little
                ? Figure.atLeast((1 - OFF_BY) * chart.low(), left, Unit.MM)
                : Figure.atMost((1 + OFF_BY) * chart.high(), left, Unit.MM);
        Margin margin = Margin.of(slug(), in.place("stock"), "Stock for " + in.cutter(), figure);
        return figure.holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, left, chart, little));
    }

    private static String message(Operations.In in, double left, Band chart, boolean little) {
        Words words = new Words(in.plan());
        String why = little
                ? " It rubs and leaves the drill's marks: drill smaller."
                : " It chatters, loads and cuts oversize: drill nearer to size, or bore first.";
        return in.cutter() + " finds " + words.fine(left) + " of stock on the diameter " + in.at() + "; the chart says "
                + words.fine(chart.low()) + " to " + words.fine(chart.high()) + "." + why;
    }

    /** Another drill in the operation before, the nearest to the middle of the chart. */
    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        DrawnOperation ream = Operations.operation(plan, caution.setUp(), caution.operation());
        double size = plan.rows()
                .cutter(ream.cutter().value())
                .map(cutter -> cutter.diameter().inside())
                .orElse(0.0);
        Band chart = Reaming.stock(size);
        return Operations.setUp(plan, caution.setUp()).operations().stream()
                .filter(one ->
                        one.kind() == Operation.Kind.DRILL && one.features().equals(ream.features()))
                .flatMap(drill -> new ToolChanges(plan, drill)
                                .drills(
                                        size - (1 + OFF_BY) * chart.high(),
                                        size - (1 - OFF_BY) * chart.low(),
                                        size - chart.expected())
                                .stream())
                .toList();
    }
}
