package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.caution.Severity;
import setwright.job.MachineAsItStands;
import setwright.plan.Plan;
import setwright.plan.place.FeatureBudget;
import setwright.quantity.Band;
import setwright.quantity.Unit;
import setwright.shop.Axis;
import setwright.shop.Machine;

/** The set-up cannot hold the position asked: the errors between datum and hole add up to more. */
public final class OffTolerance implements Check {
    @Override
    public String slug() {
        return "off-tolerance";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return plan.place().budgets().stream().map(budget -> look(plan, budget)).toList();
    }

    /** Whether this check says more than a note about a hole. */
    static boolean says(Plan plan, String feature) {
        return plan.place().budgets().stream()
                .anyMatch(budget -> budget.feature().equals(feature) && budget.decisive() > budget.limit());
    }

    private Finding look(Plan plan, FeatureBudget budget) {
        double usual = budget.rss().inside();
        double worst = Math.max(usual, budget.worstCase().inside());
        Margin margin = Margin.of(
                        slug(),
                        Caution.Place.of(budget.setUp(), budget.operation(), budget.feature(), budget.feature()),
                        "Place of " + budget.feature() + ", most by " + budget.largest(),
                        Figure.atMost(budget.limit(), budget.decisive(), Unit.MM))
                .between(new Band(usual, usual, worst));
        if (!margin.figure().holds()) {
            return Finding.fails(margin, Severity.CAUTION, off(new Words(plan), budget));
        }
        return worst <= budget.limit()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.NOTE, onlyWorst(new Words(plan), budget, worst));
    }

    private static String off(Words words, FeatureBudget budget) {
        return "The errors from the datum put " + budget.feature() + " out by up to " + words.fine(budget.decisive())
                + " " + Words.at(budget.setUp(), budget.operation()) + "; " + words.fine(budget.limit())
                + " is allowed, half the position tolerance. Most of it is " + budget.largest()
                + ": take a machine with a readout, bore the hole, or drill it from a stiffer start.";
    }

    private static String onlyWorst(Words words, FeatureBudget budget, double worst) {
        return "Everything at once puts " + budget.feature() + " out by " + words.fine(worst) + " "
                + Words.at(budget.setUp(), budget.operation()) + "; " + words.fine(budget.limit())
                + " is allowed, and the usual day keeps to it: take care with " + budget.largest() + ".";
    }

    /** Another machine that is owned and has readouts on both axes. */
    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return plan.rows().all(Machine.class).stream()
                .filter(machine -> machine.kept().owned() != 0)
                .filter(machine -> !machine.id().equals(plan.rows().machine().id()))
                .filter(machine ->
                        machine.x().read() == Axis.ReadBy.READOUT && machine.y().read() == Axis.ReadBy.READOUT)
                .map(machine -> new Proposal(
                        Way.DEVICE,
                        "Take the job to the " + machine.name() + ", which has readouts.",
                        plan.job()
                                .withPlan(plan.job()
                                        .plan()
                                        .withMachine(new MachineAsItStands(machine.id(), List.of(), null)))))
                .toList();
    }
}
