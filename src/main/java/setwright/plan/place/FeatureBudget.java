package setwright.plan.place;

import java.util.List;
import java.util.Optional;
import setwright.location.Contributor;
import setwright.location.ErrorBudget;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/**
 * How far something that has a tolerance may come out.
 *
 * @param to the feature that it is related to; empty for what a feature has by itself
 * @param limit what the drawing allows either way, or from the true place, mm
 * @param worstCase every error at its end, one way, worked
 * @param rss root sum square, known biases added, worked
 * @param decisive the sum that counts against the limit: the worst case where one contributor alone takes over 60 % of it
 * @param halved the same with the largest contributor made half as large
 * @param largest the contributor that counts most
 * @param halvedBy what would halve that; may be empty
 * @param opinion the grade that is asked and what the process usually reaches; empty where no grade is meant
 * @param finer whether the grade asked is finer than the process usually reaches
 */
public record FeatureBudget(
        String setUp,
        String feature,
        Aspect aspect,
        String to,
        String operation,
        double limit,
        Value worstCase,
        Value rss,
        double decisive,
        double halved,
        String largest,
        String halvedBy,
        String opinion,
        boolean finer,
        List<Contribution> contributions) {
    public FeatureBudget {
        contributions = List.copyOf(contributions);
    }

    /**
     * One error between datum and feature, mm either way, with its source.
     *
     * @param known whether it is there every time and always adds
     */
    public record Contribution(String name, double halfWidth, boolean known, String source) {}

    /** Identity of what has the tolerance in its job: {@code hole1}, {@code slot1-width}. */
    public String subject() {
        String relation = to.isEmpty() ? "" : "+" + to;
        return aspect == Aspect.PLACE ? feature : feature + relation + "-" + aspect.slug();
    }

    /** In words: {@code width of slot1}. */
    public String what() {
        return to.isEmpty() ? aspect.words() + " of " + feature : feature + " " + aspect.words() + " to " + to;
    }

    static FeatureBudget of(Where where, ErrorBudget budget, double limit, Opinion opinion) {
        Value[] from = budget.contributors().stream()
                .map(one -> (Value)
                        Given.of(one.name(), one.amount(), Unit.MM, one.source().text()))
                .toArray(Value[]::new);
        String compared = budget.compared().words();
        Optional<Contributor> largest = budget.largest();
        return new FeatureBudget(
                where.setUp(),
                where.feature(),
                where.aspect(),
                where.to(),
                where.operation(),
                limit,
                ErrorBudget.WORST_CASE.of(budget.worstCase(), compared, from),
                ErrorBudget.ROOT_SUM_SQUARE.of(budget.rootSumSquare(), compared, from),
                budget.decisive(limit),
                budget.withLargestHalved(limit),
                largest.map(Contributor::name).orElse(""),
                largest.map(Contributor::halvedBy).orElse(""),
                opinion.words(),
                opinion.finer(),
                budget.contributors().stream().map(FeatureBudget::contribution).toList());
    }

    private static Contribution contribution(Contributor one) {
        return new Contribution(
                one.name(),
                one.amount(),
                one.kind() == Contributor.Kind.BIAS,
                one.source().text());
    }

    /** What a budget is of, and where it is decided. */
    record Where(String setUp, String operation, String feature, Aspect aspect, String to) {}

    /** The grade of the process as a second opinion. */
    record Opinion(String words, boolean finer) {
        static final Opinion NONE = new Opinion("", false);
    }
}
