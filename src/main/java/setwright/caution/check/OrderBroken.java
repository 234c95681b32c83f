package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Operation;
import setwright.plan.Plan;

/** Something is done before what has to come first. */
public final class OrderBroken implements Check {
    /**
     * A rule of precedence (common practice).
     *
     * @param why what goes wrong the other way round
     */
    private record Rule(Operation.Kind first, Operation.Kind then, String why) {}

    private static final List<Rule> RULES = List.of(
            new Rule(Operation.Kind.SPOT, Operation.Kind.DRILL, "A spot after the drill guides nothing"),
            new Rule(Operation.Kind.DRILL, Operation.Kind.REAM, "A reamer in the full breaks"),
            new Rule(Operation.Kind.DRILL, Operation.Kind.BORE, "A boring bar starts in a hole"),
            new Rule(Operation.Kind.DRILL, Operation.Kind.COUNTERBORE, "A pilot runs in a hole"),
            new Rule(Operation.Kind.BORE, Operation.Kind.REAM, "A bar after the reamer spoils its size"),
            new Rule(Operation.Kind.DRILL, Operation.Kind.TAP, "A tap in the full breaks"));

    @Override
    public String slug() {
        return "order-broken";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        List<Operations.In> all = Operations.all(plan).toList();
        for (int i = 0; i < all.size(); i++) {
            found.add(look(all.subList(0, i), all.get(i), all.subList(i + 1, all.size())));
        }
        return found;
    }

    private Finding look(List<Operations.In> before, Operations.In in, List<Operations.In> after) {
        for (Rule rule : RULES) {
            Optional<Operations.In> late = other(in, after, rule);
            if (late.isPresent() && other(in, before, rule).isEmpty()) {
                return fails(in, late.get(), rule);
            }
        }
        return Finding.HOLDS;
    }

    /** The first of some operations that should come before this one of the same feature. */
    private static Optional<Operations.In> other(Operations.In in, List<Operations.In> some, Rule rule) {
        return some.stream()
                .filter(later -> in.operation().kind() == rule.then()
                        && later.operation().kind() == rule.first())
                .filter(later -> later.operation().features().stream()
                        .anyMatch(in.operation().features()::contains))
                .findFirst();
    }

    private Finding fails(Operations.In in, Operations.In late, Rule rule) {
        Words words = new Words(in.plan());
        return Finding.fails(
                Caution.Place.of(
                        in.setUp().id(), in.operation().id(), late.operation().id(), words.cutter(in.operation())),
                slug(),
                Severity.CAUTION,
                words.cutter(in.operation()) + " " + in.at() + " comes before " + words.cutter(late.operation()) + " "
                        + late.at() + ". " + rule.why() + ": change the order.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        DrawnSetUp setUp = Operations.setUp(plan, caution.setUp());
        DrawnOperation early = Operations.operation(plan, caution.setUp(), caution.operation());
        OrderChanges order = new OrderChanges(plan);
        return setUp.operation(caution.subject()).stream()
                .flatMap(late ->
                        Stream.of(order.operationBefore(setUp, late, early), order.operationBehind(setUp, early, late)))
                .toList();
    }
}
