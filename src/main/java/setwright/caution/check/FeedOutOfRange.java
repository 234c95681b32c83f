package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.cutting.MillingBounds;
import setwright.cutting.MillingLoad;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.MilledExtremes;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Band;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;

/** A chip so thin that the edge rubs, or so thick that it chips. */
public final class FeedOutOfRange implements Check {
    /** Of the starting feed of the table: what a tooth, and the lips of a drill, take at most (common practice). */
    private static final double MOST_A_TOOTH = 1.5;

    private static final double MOST_A_TURN = 2;

    /** A little inside the limit, so that what is offered keeps to it. */
    private static final double INSIDE = 1.05;

    @Override
    public String slug() {
        return "feed-out-of-range";
    }

    /** A tap has no choice. */
    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug(), in -> in.operation().kind() != Operation.Kind.TAP, this::look);
    }

    private Finding look(Operations.In in, OperationCut cut) {
        Cutter cutter = in.cutterRow().orElseThrow();
        Optional<CuttingSpeed> row = in.plan().rows().cuttingSpeed(cutter.form(), cutter.material());
        if (row.isEmpty()) {
            return in.unlooked(slug(), Operations.FOR_CUT);
        }
        double table = row.get().feedAt(cutter.diameter().inside());
        double least = MillingBounds.thinnest(cutter.material());
        MillingLoad load = cut.milling();
        MilledExtremes beyond = cut.extremes();
        return load == null || beyond == null
                ? judged(in, Chip.even(cut.feedPerEdge().inside()), new Ends(least, MOST_A_TURN * table, " a turn"))
                : judged(
                        in,
                        new Chip(
                                load.cut().largestChip(),
                                beyond.chip().inside(),
                                beyond.chipRunningOut().inside()),
                        new Ends(least, MOST_A_TOOTH * table, ""));
    }

    /**
     * What a tooth takes, mm.
     *
     * @param fed by the feed alone
     * @param thickest where the edge is waved
     * @param runningOut the same with the holder's run-out; told as the end of a band, never judged
     */
    private record Chip(double fed, double thickest, double runningOut) {
        static Chip even(double chip) {
            return new Chip(chip, chip, chip);
        }
    }

    /** Between which ends a chip should lie, mm, and what it is counted by. */
    private record Ends(double least, double most, String by) {}

    private Finding judged(Operations.In in, Chip chip, Ends ends) {
        boolean thin = chip.thickest() < ends.least();
        double value = thin ? chip.thickest() : chip.fed();
        Margin margin = Margin.of(
                        slug(),
                        in.place("feed"),
                        "Chip of " + in.cutter(),
                        thin
                                ? Figure.atLeast(ends.least(), value, Unit.MM)
                                : Figure.atMost(ends.most(), value, Unit.MM))
                .between(new Band(value, value, Math.max(value, chip.runningOut())));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, margin.figure(), ends.by()));
    }

    private static String message(Operations.In in, Figure figure, String by) {
        Words words = new Words(in.plan());
        String chip =
                in.cutter() + " cuts a chip of " + words.fine(figure.value()) + by + " at its thickest " + in.at();
        return figure.worseUp()
                ? chip + "; " + words.fine(figure.limit()) + by
                        + " is the most. The edge chips and the tool digs in: take less feed."
                : chip + "; below " + words.fine(figure.limit())
                        + " the edge rubs instead of cutting and hardens the work: take more feed or fewer turns.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        Figure figure = caution.figure();
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(cut.speedAndFeedToPencil());
        if (figure != null && figure.value() > 0) {
            double times = figure.limit() / figure.value();
            all.add(cut.fed(figure.worseUp() ? times / INSIDE : times * INSIDE));
        }
        return all;
    }
}
