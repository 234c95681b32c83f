package setwright.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/** Tries what might mend a caution; the second stage of judging, in the background, dropped by the next edit. */
public final class Remedies {
    /** How many are offered. */
    public static final int OFFERED = 3;

    private final Plan plan;
    private final Findings before;
    private final Caution caution;
    private final Shop shop;

    private Remedies(Plan plan, Findings before, Caution caution, Shop shop) {
        this.plan = plan;
        this.before = before;
        this.caution = caution;
        this.shop = shop;
    }

    /**
     * Up to three remedies that clear the caution, those that bring least harm first; where none clears it, nothing.
     *
     * @param dropped asked between two trials; true ends the trying
     */
    public static List<Remedy> tried(
            Plan plan, Findings findings, Caution caution, Shop shop, BooleanSupplier dropped) {
        return new Remedies(plan, findings, caution, shop).tried(dropped);
    }

    private List<Remedy> tried(BooleanSupplier dropped) {
        List<Tried> clearing = new ArrayList<>();
        for (Proposal proposal : byTurns(proposals())) {
            if (dropped.getAsBoolean()) {
                return List.of();
            }
            if (enough(clearing, proposal.way())) {
                continue;
            }
            Remedy remedy = attempt(proposal);
            if (remedy.clears()) {
                clearing.add(new Tried(proposal.way(), remedy));
            }
        }
        return clearing.stream()
                .map(Tried::remedy)
                .sorted(Comparator.comparingLong(Remedy::harm))
                .limit(OFFERED)
                .toList();
    }

    private record Tried(Proposal.Way way, Remedy remedy) {
        boolean harmless() {
            return remedy.harm() == 0;
        }
    }

    private static boolean enough(List<Tried> clearing, Proposal.Way way) {
        List<Tried> good = clearing.stream().filter(Tried::harmless).toList();
        return good.size() >= OFFERED || way.oneWillDo() && good.stream().anyMatch(one -> one.way() == way);
    }

    private List<Proposal> proposals() {
        return Checks.ALL.stream()
                .filter(check -> check.slug().equals(caution.slug()))
                .flatMap(check -> check.proposals(plan, caution).stream())
                .filter(proposal -> !proposal.changed().equals(plan.job()))
                .toList();
    }

    /** The first of every way, then the second of every way, and so on, so that what is offered differs. */
    private static List<Proposal> byTurns(List<Proposal> proposals) {
        Map<Proposal.Way, Integer> met = new EnumMap<>(Proposal.Way.class);
        record Turn(int turn, Proposal proposal) {}
        return proposals.stream()
                .map(one -> new Turn(met.merge(one.way(), 1, Integer::sum), one))
                .sorted(Comparator.comparingInt(Turn::turn))
                .map(Turn::proposal)
                .toList();
    }

    private Remedy attempt(Proposal proposal) {
        Plan changed = Planner.after(plan, proposal.changed(), shop).settled(Optional.of(plan));
        Findings after = Judge.judge(changed);
        return new Remedy(
                proposal.text(),
                proposal.changed(),
                clears(after),
                notIn(after, before),
                notIn(before, after).stream()
                        .filter(gone -> !gone.identity().equals(caution.identity()))
                        .toList(),
                changed.time().each() - plan.time().each());
    }

    /** Gone or no worse than a note, not merely moved to another operation, and no check can look any less than before. */
    private boolean clears(Findings after) {
        boolean gone = after.find(caution.identity())
                .map(left -> left.severity() == Severity.NOTE && caution.severity() != Severity.NOTE)
                .orElse(true);
        boolean moved = notIn(after, before).stream()
                .anyMatch(added -> added.severity() != Severity.NOTE && added.isOfTheKindOf(caution));
        return gone && !moved && before.notChecked().containsAll(after.notChecked());
    }

    /** Cautions of one that the other has not, or not as bad. */
    private static List<Caution> notIn(Findings one, Findings other) {
        return one.cautions().stream()
                .filter(caution -> other.find(caution.identity())
                        .filter(same -> same.severity().compareTo(caution.severity()) <= 0)
                        .isEmpty())
                .toList();
    }
}
