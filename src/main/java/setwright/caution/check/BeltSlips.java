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
import setwright.cutting.SpindleDrive;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/** A belt that gives under every tooth, though the motor would bear the mean. */
public final class BeltSlips implements Check {
    @Override
    public String slug() {
        return "belt-slips";
    }

    /** Machines with step pulleys, and cuts whose torque rises and falls; a hole is cut evenly. */
    @Override
    public List<Finding> look(Plan plan) {
        return plan.rows().machine().steps().isEmpty()
                ? List.of()
                : Operations.inItsCut(plan, slug(), in -> !in.makesHoles(), this::look);
    }

    private Finding look(Operations.In in, OperationCut cut) {
        MillingLoad load = cut.milling();
        double available = SpindleOverloaded.available(in.plan(), cut);
        if (load == null || cut.power().inside() > available) {
            return Finding.HOLDS;
        }
        double peak = load.peakPower(cut.speed().inside());
        Margin margin = Margin.of(
                slug(),
                in.place("belt"),
                "Belt under the peaks of " + in.cutter(),
                Figure.atMost(SpindleDrive.BELT_AT_A_MOMENT * available, peak, Unit.W));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, load, margin.figure()));
    }

    private static String message(Operations.In in, MillingLoad load, Figure figure) {
        Words words = new Words(in.plan());
        return in.cutter() + " " + in.at() + " takes " + words.power(figure.value())
                + " at the moment when its teeth bite (" + words.of(Measure.TORQUE, load.peakTorque())
                + " at the spindle), and the belt carries about " + words.power(figure.limit())
                + ". It squeals and the cutter stands: take less depth or feed, or a cutter with more teeth.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(cut.speedAndFeedToPencil());
        all.addAll(cut.shallower());
        return all;
    }
}
