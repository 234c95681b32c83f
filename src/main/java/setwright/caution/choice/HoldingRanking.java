package setwright.caution.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import setwright.caution.Caution;
import setwright.caution.Checks;
import setwright.caution.Findings;
import setwright.caution.Severity;
import setwright.job.ChoiceEdits;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.choose.Arrangement;
import setwright.plan.choose.Arrangements;
import setwright.shop.Shop;

/**
 * Every arrangement of the shop for the part of a set-up, the best first. Kept ones come before dropped ones; then what
 * has fewest cautions, what could be checked most, what leaves standing what stands on the table, fewest notes, least
 * time for the quantity, and what the trade would think of first.
 */
public final class HoldingRanking {
    private static final double MINUTE = 60;

    private final Plan plan;
    private final DrawnSetUp setUp;

    private HoldingRanking(Plan plan, DrawnSetUp setUp) {
        this.plan = plan;
        this.setUp = setUp;
    }

    /** Nothing where the plan has no such set-up, or where the trying was dropped. */
    public static List<Ranked> of(Plan plan, Findings findings, String setUp, Shop shop, Trying trying) {
        return plan.drawnUp()
                .setUp(setUp)
                .map(drawn -> new HoldingRanking(plan, drawn).ranked(findings, shop, trying))
                .orElse(List.of());
    }

    private List<Ranked> ranked(Findings findings, Shop shop, Trying trying) {
        List<Tried> tried = new ArrayList<>(
                new Trials(plan, findings, shop, this::about, Checks.ofGrip()).of(candidates(), trying));
        tried.sort(Comparator.comparing((Tried one) -> !one.kept())
                .thenComparing(one -> !one.candidate().against().isEmpty())
                .thenComparing(Tried::cautions)
                .thenComparing(this::unlooked)
                .thenComparing(one -> new HoldingReasons(one, setUp.id()).clearsTheTable())
                .thenComparing(Tried::notes)
                .thenComparing(one -> Math.round(one.plan().time().batch() / MINUTE))
                .thenComparing(Tried::order));
        List<Ranked> ranked = new ArrayList<>();
        for (Tried one : tried) {
            ranked.add(ranked(ranked.size() + 1, one));
        }
        return ranked;
    }

    /** The part has to be lifted whatever holds it; of notes only those of the grip say anything about it. */
    private boolean about(Caution caution) {
        boolean here = caution.setUp().equals(setUp.id())
                && !Checks.ofTools().contains(caution.slug())
                && !(caution.slug().equals("overweight") && caution.subject().equals("part"));
        return here && (caution.severity() != Severity.NOTE || Checks.ofGrip().contains(caution.slug()));
    }

    private List<Candidate> candidates() {
        return Arrangements.of(plan.drawnUp(), setUp, plan.rows()).stream()
                .map(this::candidate)
                .toList();
    }

    private Candidate candidate(Arrangement one) {
        return new Candidate(
                one.holding().kind().name().toLowerCase(Locale.ROOT),
                one.text(),
                one.against(),
                one.doubts(),
                one.now(),
                ChoiceEdits.held(plan.drawnUp(), setUp.id(), one.holding()));
    }

    private int unlooked(Tried one) {
        return (int) one.findings().notChecked().stream()
                .filter(what -> what.setUp().equals(setUp.id()))
                .count();
    }

    private Ranked ranked(int rank, Tried one) {
        boolean worked = one.candidate().against().isEmpty();
        HoldingReasons reasons = new HoldingReasons(one, setUp.id());
        return new Ranked(
                rank,
                one.candidate().id(),
                one.candidate().text(),
                one.candidate().now(),
                one.kept(),
                reasons.all(),
                worked ? reasons.factor().orElse(null) : null,
                worked ? one.plan().time().batch() : null,
                one.candidate().changed());
    }
}
