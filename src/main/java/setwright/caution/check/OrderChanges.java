package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Edits;
import setwright.job.Operation;
import setwright.job.SetUp;
import setwright.plan.Plan;

/** Operations and set-ups in another order, or in another set-up. */
record OrderChanges(Plan plan) {
    /** A set-up worked before another one. */
    Proposal setUpBefore(String moved, String before) {
        List<SetUp> all = new ArrayList<>(Edits.written(plan.drawnUp()));
        SetUp one = all.remove(ids(all).indexOf(moved));
        all.add(ids(all).indexOf(before), one);
        return proposal("Take set-up " + moved + ", " + one.title() + ", before " + before + ".", all);
    }

    private static List<String> ids(List<SetUp> all) {
        return all.stream().map(SetUp::id).toList();
    }

    /** An operation of a set-up worked before another one of it. */
    Proposal operationBefore(DrawnSetUp setUp, DrawnOperation moved, DrawnOperation before) {
        Words words = new Words(plan);
        return proposal(
                "Take " + words.cutter(moved) + " before " + words.cutter(before) + ".",
                written().stream()
                        .map(one -> one.id().equals(setUp.id()) ? reordered(one, moved.id(), before.id(), 0) : one)
                        .toList());
    }

    /** An operation of a set-up worked next after another one of it. */
    Proposal operationBehind(DrawnSetUp setUp, DrawnOperation moved, DrawnOperation other) {
        Words words = new Words(plan);
        return proposal(
                "Take " + words.cutter(moved) + " after " + words.cutter(other) + ".",
                written().stream()
                        .map(one -> one.id().equals(setUp.id()) ? reordered(one, moved.id(), other.id(), 1) : one)
                        .toList());
    }

    private static SetUp reordered(SetUp setUp, String moved, String beside, int behind) {
        List<Operation> all = new ArrayList<>(setUp.operations());
        all.removeIf(one -> one.id().equals(moved));
        List<String> ids = all.stream().map(Operation::id).toList();
        all.add(ids.indexOf(beside) + behind, operation(setUp, moved));
        return setUp.withOperations(all);
    }

    private static Operation operation(SetUp setUp, String id) {
        return setUp.operations().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The set-up has no operation " + id + "."));
    }

    /** What a set-up does to these features alone, done in another set-up with the same side up. */
    List<Proposal> into(DrawnSetUp to, DrawnSetUp from, List<String> features) {
        List<DrawnOperation> moved = from.operations().stream()
                .filter(one -> features.containsAll(one.features()))
                .toList();
        if (moved.isEmpty() || to.up().value() != from.up().value()) {
            return List.of();
        }
        Words words = new Words(plan);
        String tools = moved.stream().map(words::cutter).distinct().collect(Collectors.joining(" and "));
        return List.of(proposal("Take " + tools + " in set-up " + to.id() + ".", moved(to, from, moved)));
    }

    /** A set-up that has nothing left to do goes. */
    private List<SetUp> moved(DrawnSetUp to, DrawnSetUp from, List<DrawnOperation> moved) {
        List<String> ids = moved.stream().map(DrawnOperation::id).toList();
        List<SetUp> all = written();
        List<Operation> operations = all.stream()
                .flatMap(one -> one.operations().stream())
                .filter(one -> ids.contains(one.id()))
                .toList();
        return all.stream()
                .map(one -> one.id().equals(from.id()) ? without(one, ids) : one)
                .map(one -> one.id().equals(to.id()) ? with(one, operations) : one)
                .filter(one -> !one.id().equals(from.id()) || !one.operations().isEmpty())
                .toList();
    }

    private static SetUp without(SetUp setUp, List<String> ids) {
        return setUp.withOperations(setUp.operations().stream()
                .filter(one -> !ids.contains(one.id()))
                .toList());
    }

    private static SetUp with(SetUp setUp, List<Operation> more) {
        return setUp.withOperations(
                Stream.concat(setUp.operations().stream(), more.stream()).toList());
    }

    /** Every set-up with all its operations written down. */
    private List<SetUp> written() {
        return Edits.written(plan.drawnUp()).stream()
                .map(one -> plan.drawnUp()
                        .setUp(one.id())
                        .map(drawn -> one.withOperations(Edits.written(one, drawn)))
                        .orElse(one))
                .toList();
    }

    private Proposal proposal(String text, List<SetUp> setUps) {
        return new Proposal(
                Way.ORDER, text, plan.job().withPlan(plan.job().plan().withSetUps(setUps)));
    }
}
