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
import setwright.cutting.MillingLoad;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/** A climb cut that pulls the table along by the backlash of its screw. */
public final class ClimbPullsTable implements Check {
    /** What a table drags with, its gibs as usual, N (from memory). */
    private static final double DRAG = 200;

    /** The same with its lock nipped, N (from memory). */
    private static final double NIPPED = 400;

    @Override
    public String slug() {
        return "climb-pulls-table";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug(), in -> !in.makesHoles(), this::look);
    }

    private Finding look(Operations.In in, OperationCut cut) {
        MillingLoad load = cut.milling();
        boolean slot = cut.width() >= in.cutterRow().orElseThrow().diameter().inside();
        double backlash = in.plan().rows().machine().x().backlash().inside();
        if (load == null || slot || backlash <= 0 || load.mean().feed() <= 0) {
            return Finding.HOLDS;
        }
        double pull = load.mean().feed();
        Margin margin =
                Margin.of(slug(), in.place("table"), "Pull of " + in.cutter(), Figure.atMost(NIPPED, pull, Unit.N));
        if (!margin.figure().holds()) {
            return Finding.fails(margin, Severity.CAUTION, message(in, pull, backlash, NIPPED, CLIMBS));
        }
        return pull > DRAG
                ? Finding.fails(margin, Severity.NOTE, message(in, pull, backlash, DRAG, NIP))
                : Finding.holds(margin);
    }

    private static final String CLIMBS =
            " with its lock nipped. It jumps by the backlash and the next tooth takes it all: cut conventional, or take less"
                    + " depth or width.";

    private static final String NIP =
            " as it stands. It jumps by the backlash: change nothing but nip the lock of the table.";

    private static String message(Operations.In in, double pull, double backlash, double drag, String wayOut) {
        Words words = new Words(in.plan());
        return in.cutter() + " climbs " + in.at() + " and pulls the table with " + words.of(Measure.FORCE, pull)
                + ", whose screw has " + words.length(backlash) + " of backlash and which drags with "
                + words.of(Measure.FORCE, drag) + wayOut;
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>();
        all.add(cut.direction(Operation.Direction.CONVENTIONAL));
        all.addAll(cut.shallower());
        return all;
    }
}
