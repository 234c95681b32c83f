package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.InWords;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.Stability;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.shop.Machine;

/** Lighter, slower and otherwise fed cuts. */
record CutChanges(Plan plan, DrawnOperation operation) {
    /** Of the depth that is quiet, so that printing it rounded keeps it quiet. */
    private static final double SURELY_QUIET = 0.95;

    static CutChanges of(Plan plan, Caution caution) {
        return new CutChanges(plan, Operations.operation(plan, caution.setUp(), caution.operation()));
    }

    /** A milling pass of two thirds and of a third of its depth. */
    List<Proposal> shallower() {
        if (plan.cut().operation(operation.id()).map(OperationCut::milling).isEmpty()) {
            return List.of();
        }
        double now = operation.depth().value().inside();
        return List.of(pass(now * 2 / 3), pass(now / 3));
    }

    /** The speed at which the pass does not ring, where there is one. */
    List<Proposal> quietSpeed() {
        return stability().map(Stability::quietSpeed).map(this::turning).stream()
                .toList();
    }

    /** The pass as deep as it is quiet at its speed. */
    List<Proposal> quietDepth() {
        return stability()
                .flatMap(Stability::quietDepth)
                .filter(quiet -> quiet < operation.depth().value().inside())
                .map(quiet -> pass(SURELY_QUIET * quiet))
                .stream()
                .toList();
    }

    private Optional<Stability> stability() {
        return plan.cut().operation(operation.id()).map(OperationCut::stability);
    }

    /** A milling pass of this depth. */
    Proposal pass(double mm) {
        Typed<Length> depth = new Words(plan).typed(mm);
        return set(
                Way.DEPTH,
                "Take " + depth.text() + " a pass " + Words.now(operation.depth()) + ".",
                OperationField.DEPTH,
                depth);
    }

    /** The fastest speed of the machine that is not above this, rad/s. */
    List<Proposal> notFasterThan(double most) {
        Machine machine = plan.rows().machine();
        return machine.steps().isEmpty()
                ? List.of(turning(most))
                : machine.steps().stream()
                        .map(Typed::inside)
                        .filter(step -> step <= most)
                        .max(Double::compare)
                        .map(this::turning)
                        .stream()
                        .toList();
    }

    private Proposal turning(double speed) {
        Words words = new Words(plan);
        Typed<SpindleSpeed> typed = words.reading().spindleSpeed(words.of(Measure.SPINDLE_SPEED, speed));
        return set(
                Way.SPEED,
                "Set " + typed.text() + " " + Words.now(operation.speed()) + ".",
                OperationField.SPEED,
                typed);
    }

    /** Speed and feed that the pencil would take, where somebody set them otherwise. */
    List<Proposal> speedAndFeedToPencil() {
        List<Proposal> all = new ArrayList<>();
        if (!operation.speed().pencilled()) {
            all.add(pencil(
                    Way.SPEED,
                    "Give the speed back to the pencil " + Words.now(operation.speed()) + ".",
                    OperationField.SPEED));
        }
        if (!operation.feed().pencilled()) {
            all.add(pencil(
                    Way.FEED,
                    "Give the feed back to the pencil " + Words.now(operation.feed()) + ".",
                    OperationField.FEED));
        }
        return all;
    }

    /** The feed times a factor. */
    Proposal fed(double times) {
        Words words = new Words(plan);
        Typed<Speed> feed = words.reading()
                .feed(words.of(Measure.FEED, times * operation.feed().value().inside()));
        return set(
                Way.FEED,
                "Set the feed to " + feed.text() + " " + Words.now(operation.feed()) + ".",
                OperationField.FEED,
                feed);
    }

    /** The other way round the edge meets the work. */
    Proposal direction(Operation.Direction direction) {
        return set(
                Way.DIRECTION,
                "Set the cut " + word(direction) + " " + Words.now(operation.direction(), CutChanges::word) + ".",
                OperationField.DIRECTION,
                direction);
    }

    /** Fed another way. */
    Proposal method(Operation.Method method) {
        return set(
                Way.METHOD,
                (method == Operation.Method.WOUND_DOWN
                                ? "Set it wound down along the cut "
                                : "Take the " + word(method) + " ")
                        + Words.now(operation.method(), CutChanges::word) + ".",
                OperationField.METHOD,
                method);
    }

    private static String word(Enum<?> value) {
        return InWords.word(value);
    }

    private <T> Proposal set(Way way, String text, OperationField<T> field, T value) {
        return new Proposal(way, text, Edits.set(plan.drawnUp(), operation.id(), field, Plannable.inked(value)));
    }

    private <T> Proposal pencil(Way way, String text, OperationField<T> field) {
        return new Proposal(way, text, Edits.pencil(plan.drawnUp(), operation.id(), field));
    }
}
