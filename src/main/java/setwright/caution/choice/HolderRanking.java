package setwright.caution.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import setwright.caution.Caution;
import setwright.caution.Checks;
import setwright.caution.Findings;
import setwright.job.ChoiceEdits;
import setwright.job.DrawnOperation;
import setwright.plan.Plan;
import setwright.plan.choose.ChoicePlan;
import setwright.plan.choose.HolderRank;
import setwright.shop.Shop;

/**
 * Every holder of the shop for the cutter of an operation, the best first: those that may take it and bear its load, with
 * fewest cautions, in the order that the trade prefers for that kind of cutter.
 */
public final class HolderRanking {
    private static final List<String> ANSWERS_FOR = List.of(
            "wrong-holder",
            "short-grip",
            "slips-in-holder",
            "pulls-out-of-holder",
            "too-fast-for-the-tool",
            "holder-meets-jaw",
            "holder-meets-clamp",
            "holder-meets-work");

    private final Plan plan;
    private final DrawnOperation operation;

    private HolderRanking(Plan plan, DrawnOperation operation) {
        this.plan = plan;
        this.operation = operation;
    }

    /** Nothing where the plan has no such operation with a cutter, or where the trying was dropped. */
    public static List<Ranked> of(Plan plan, Findings findings, String operation, Shop shop, Trying trying) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operation(operation).stream())
                .findFirst()
                .map(drawn -> new HolderRanking(plan, drawn).ranked(findings, shop, trying))
                .orElse(List.of());
    }

    private List<Ranked> ranked(Findings findings, Shop shop, Trying trying) {
        Predicate<Caution> about = caution ->
                caution.operation().equals(operation.id()) && !Checks.ofGrip().contains(caution.slug());
        List<Tried> tried =
                new ArrayList<>(new Trials(plan, findings, shop, about, ANSWERS_FOR).of(candidates(), trying));
        tried.sort(Comparator.comparing((Tried one) -> !one.kept())
                .thenComparing(one -> !one.candidate().against().isEmpty())
                .thenComparing(Tried::cautions)
                .thenComparing(Tried::order));
        List<Ranked> ranked = new ArrayList<>();
        for (Tried one : tried) {
            ranked.add(ranked(ranked.size() + 1, one));
        }
        return ranked;
    }

    private List<Candidate> candidates() {
        return plan.choose().operations().stream()
                .filter(choice -> choice.operation().equals(operation.id()))
                .map(ChoicePlan.OperationChoice::ranked)
                .flatMap(List::stream)
                .map(this::candidate)
                .toList();
    }

    private Candidate candidate(HolderRank.Candidate one) {
        String id = one.holder().id();
        boolean now = id.equals(operation.holder().value());
        return new Candidate(
                id,
                one.holder().name(),
                one.against().stream().map(HolderRanking::sentence).toList(),
                List.of(),
                now,
                now ? plan.job() : ChoiceEdits.holder(plan.drawnUp(), operation.id(), id));
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private Ranked ranked(int rank, Tried one) {
        boolean worked = one.candidate().against().isEmpty();
        return new Ranked(
                rank,
                one.candidate().id(),
                one.candidate().text(),
                one.candidate().now(),
                one.kept(),
                new HolderReasons(one, plan, operation.id()).all(),
                null,
                worked ? one.plan().time().batch() : null,
                one.candidate().changed());
    }
}
