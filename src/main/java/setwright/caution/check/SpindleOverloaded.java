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
import setwright.cutting.Drilling;
import setwright.cutting.LeverPush;
import setwright.cutting.SpindleDrive;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Unit;

/** The cut asks for more power than the spindle has. */
public final class SpindleOverloaded implements Check {
    /** A motor bears this much more for the length of a pass, and the efficiency is a usual one (common practice). */
    private static final double FOR_A_PASS = 1.25;

    @Override
    public String slug() {
        return "spindle-overloaded";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(
                plan, slug(), in -> in.operation().speed().value().inside() > 0, this::look);
    }

    /** Power that the spindle has at the cutter at the speed of a cut, W. */
    static double available(Plan plan, OperationCut cut) {
        return new SpindleDrive(plan.rows().machine()).powerAt(cut.speed().inside());
    }

    private Finding look(Operations.In in, OperationCut cut) {
        double available = available(in.plan(), cut);
        double power = cut.power().inside() * (byHand(in) ? Drilling.feedFactor(LeverPush.SLOWEST) : 1);
        Margin margin = Margin.of(
                slug(), in.place("spindle"), "Power for " + in.cutter(), Figure.atMost(available, power, Unit.W));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(
                        margin,
                        power > FOR_A_PASS * available ? Severity.STOP : Severity.CAUTION,
                        message(in, available, power));
    }

    /** A hand that feels the spindle slow down feeds less. */
    private static boolean byHand(Operations.In in) {
        return in.operation().kind() == Operation.Kind.DRILL
                && in.operation().method().value().byLever();
    }

    private static String message(Operations.In in, double available, double power) {
        Words words = new Words(in.plan());
        return in.cutter() + " " + in.at() + " asks for " + words.power(power) + " at the cutter and the "
                + in.plan().rows().machine().name() + " has " + words.power(available)
                + " there. The spindle stalls with the cutter in the work: take less depth, width or feed.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(cut.speedAndFeedToPencil());
        all.addAll(cut.shallower());
        return all;
    }
}
