package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.location.HoleErrors;
import setwright.location.budget.Measured;
import setwright.plan.Plan;
import setwright.plan.place.Aspect;
import setwright.plan.place.FeatureBudget;
import setwright.plan.place.Leaves;
import setwright.quantity.Band;
import setwright.quantity.Unit;

/** The set-up cannot hold the tolerance asked: the errors between datum and feature add up to more. */
public final class OffTolerance implements Check {
    @Override
    public String slug() {
        return "off-tolerance";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return plan.place().budgets().stream().map(budget -> look(plan, budget)).toList();
    }

    /** Whether this check says more than a note about the place of a hole. */
    static boolean says(Plan plan, String feature) {
        return plan.place().budgets().stream()
                .anyMatch(budget -> budget.subject().equals(feature)
                        && budget.decisive() > budget.limit()
                        && !saidElsewhere(budget));
    }

    private Finding look(Plan plan, FeatureBudget budget) {
        double usual = budget.rss().inside();
        double worst = Math.max(usual, budget.worstCase().inside());
        Words words = new Words(plan);
        Margin margin = Margin.of(
                        slug(),
                        Caution.Place.of(
                                budget.setUp(), budget.operation(), budget.subject(), Words.sentence(budget.what())),
                        Words.sentence(budget.what()) + ", most by " + budget.largest(),
                        Figure.atMost(budget.limit(), budget.decisive(), Unit.MM))
                .between(new Band(usual, usual, worst));
        if (!margin.figure().holds()) {
            return saidElsewhere(budget) ? Finding.HOLDS : Finding.fails(margin, Severity.CAUTION, off(words, budget));
        }
        return worst <= budget.limit()
                        || budget.aspect() != Aspect.PLACE && !budget.aspect().relates()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.NOTE, onlyWorst(words, budget, worst));
    }

    /** One cause is one caution: where spring of the tool or drift of the drill alone is too much, its own check says so. */
    private static boolean saidElsewhere(FeatureBudget budget) {
        return budget.contributions().stream().anyMatch(one -> springs(one, budget) || drifts(one, budget));
    }

    private static boolean springs(FeatureBudget.Contribution one, FeatureBudget budget) {
        return one.name().equals(Leaves.NAME) && one.halfWidth() > budget.limit();
    }

    private static boolean drifts(FeatureBudget.Contribution one, FeatureBudget budget) {
        double usual = budget.rss().inside();
        double others = Math.sqrt(Math.max(0, usual * usual - one.halfWidth() * one.halfWidth()));
        return budget.aspect() == Aspect.PLACE
                && one.name().equals(HoleErrors.DRIFT_NAME)
                && DrillWanders.tooFar(one.halfWidth(), 2 * budget.limit())
                && others <= budget.limit();
    }

    private static String off(Words words, FeatureBudget budget) {
        return Words.sentence(budget.what()) + " may come out " + words.fine(budget.decisive()) + " off "
                + Words.at(budget.setUp(), budget.operation()) + "; " + words.fine(budget.limit()) + " is allowed"
                + way(budget) + ". Most of it is " + budget.largest() + mend(words, budget)
                + (budget.finer() ? " " + budget.opinion() + "." : "");
    }

    private static String way(FeatureBudget budget) {
        return switch (budget.aspect()) {
            case PLACE, POSITION, COAXIAL -> " from the true place, half the position tolerance";
            case PARALLEL, SQUARE, ANGULAR -> " over the whole length";
            default -> " either way";
        };
    }

    private static String mend(Words words, FeatureBudget budget) {
        String way = budget.halvedBy().isEmpty() ? "the way it is got" : "that by " + budget.halvedBy();
        String left = ". Change " + way + "; halved, " + words.fine(budget.halved()) + " is left.";
        boolean measure = sized(budget) && budget.contributions().stream().noneMatch(OffTolerance::isLastCut);
        return left + (measure ? " Or measure before the last cut and take that by the gauge." : "");
    }

    private static boolean isLastCut(FeatureBudget.Contribution one) {
        return one.name().equals(Measured.LAST_CUT);
    }

    /** Whether it can be measured and corrected at the machine. */
    private static boolean sized(FeatureBudget budget) {
        return budget.aspect() != Aspect.PLACE && !budget.aspect().relates();
    }

    private static String onlyWorst(Words words, FeatureBudget budget, double worst) {
        return "Everything at once puts " + budget.feature() + " out by " + words.fine(worst) + " "
                + Words.at(budget.setUp(), budget.operation()) + "; " + words.fine(budget.limit())
                + " is allowed, and the usual day keeps to it: take care with " + budget.largest() + ".";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return plan.place().budgets().stream()
                .filter(budget -> budget.setUp().equals(caution.setUp()))
                .filter(budget -> budget.subject().equals(caution.subject()))
                .flatMap(budget -> new BudgetChanges(plan, budget).all().stream())
                .toList();
    }
}
