package setwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Changes of a job, each {@code Job -> Job}. What is only pencilled so far is written down, in its drawn-up order and with
 * every value still pencilled, before anything in it is changed.
 */
public final class Edits {
    private Edits() {}

    /** Puts a value into a field of an operation: ink, a measurement, or back to the pencil. */
    public static <T> Job set(DrawnUp drawnUp, String operation, OperationField<T> field, Plannable<T> value) {
        return changed(drawnUp, operation, before -> field.write(before, value));
    }

    /** What the pencil has in the field stays from now on. */
    public static <T> Job ink(DrawnUp drawnUp, String operation, OperationField<T> field) {
        T value = field.drawn().apply(drawn(drawnUp, operation)).value();
        return set(drawnUp, operation, field, Plannable.inked(value));
    }

    /** The pencil may fill the field again. */
    public static <T> Job pencil(DrawnUp drawnUp, String operation, OperationField<T> field) {
        return set(drawnUp, operation, field, Plannable.pencilled());
    }

    /** All that is pencilled in the operation stays from now on. */
    public static Job inkAll(DrawnUp drawnUp, String operation) {
        DrawnOperation drawn = drawn(drawnUp, operation);
        return changed(drawnUp, operation, before -> {
            Operation after = before;
            for (OperationField<?> field : OperationField.all()) {
                after = inked(after, drawn, field);
            }
            return after;
        });
    }

    /** Says why speed or feed were set by hand. */
    public static Job reason(DrawnUp drawnUp, String operation, String reason) {
        return changed(
                drawnUp,
                operation,
                before -> new Operation(
                        before.id(),
                        before.kind(),
                        before.features(),
                        before.cutter(),
                        before.holder(),
                        before.stickOut(),
                        before.depth(),
                        before.width(),
                        before.finish(),
                        before.lastPass(),
                        before.toolLife(),
                        before.direction(),
                        before.coolant(),
                        before.method(),
                        before.speed(),
                        before.feed(),
                        before.kneeHeight(),
                        reason));
    }

    /** Puts a value into a field of a set-up's vise holding. */
    public static <T> Job set(DrawnUp drawnUp, String setUp, ViseField<T> field, Plannable<T> value) {
        return changedSetUp(
                drawnUp.job(), written(drawnUp), setUp, before -> before.withHolding(field.write(vise(before), value)));
    }

    public static <T> Job ink(DrawnUp drawnUp, String setUp, ViseField<T> field) {
        DrawnSetUp drawn = drawnUp.setUp(setUp).orElseThrow(() -> missing("set-up", setUp));
        T value = field.drawn().apply(vise(drawn)).value();
        return set(drawnUp, setUp, field, Plannable.inked(value));
    }

    public static <T> Job pencil(DrawnUp drawnUp, String setUp, ViseField<T> field) {
        return set(drawnUp, setUp, field, Plannable.pencilled());
    }

    /**
     * The set-ups of the job with those that the pencil added; their operations stay to the pencil until one of them is
     * changed. The job may be newer than what was drawn up of it: what it has beyond that comes last.
     */
    public static List<SetUp> written(DrawnUp drawnUp) {
        List<SetUp> all = new ArrayList<>();
        for (DrawnSetUp drawn : drawnUp.setUps()) {
            all.add(ofJob(drawnUp.job(), drawn.id())
                    .orElseGet(() -> new SetUp(
                            drawn.id(),
                            drawn.title(),
                            Plannable.inked(drawn.up().value()),
                            drawn.quarterTurns(),
                            new UndecidedHolding(),
                            drawn.datum(),
                            List.of())));
        }
        drawnUp.job().plan().setUps().stream()
                .filter(setUp -> drawnUp.setUp(setUp.id()).isEmpty())
                .forEach(all::add);
        return all;
    }

    /** The same with the operations of every set-up written down too; a list that may grow. */
    static List<SetUp> writtenWhole(DrawnUp drawnUp) {
        List<SetUp> all = new ArrayList<>(written(drawnUp));
        all.replaceAll(setUp -> drawnUp.setUp(setUp.id())
                .map(drawn -> setUp.withOperations(written(setUp, drawn)))
                .orElse(setUp));
        return all;
    }

    /** The operations of a set-up with those that the pencil added, in drawn-up order; newer ones of the job last. */
    public static List<Operation> written(SetUp ink, DrawnSetUp drawn) {
        List<Operation> all = new ArrayList<>();
        for (DrawnOperation operation : drawn.operations()) {
            all.add(ink.operations().stream()
                    .filter(before -> before.id().equals(operation.id()))
                    .findFirst()
                    .orElseGet(() -> Operation.pencilled(operation.id(), operation.kind(), operation.features())));
        }
        ink.operations().stream()
                .filter(operation -> drawn.operation(operation.id()).isEmpty())
                .forEach(all::add);
        return all;
    }

    private static Job changed(DrawnUp drawnUp, String operation, UnaryOperator<Operation> change) {
        DrawnSetUp drawn = drawnUp.setUps().stream()
                .filter(setUp -> setUp.operation(operation).isPresent())
                .findFirst()
                .orElseThrow(() -> missing("operation", operation));
        return changedSetUp(
                drawnUp.job(),
                written(drawnUp),
                drawn.id(),
                before -> before.withOperations(written(before, drawn).stream()
                        .map(each -> each.id().equals(operation) ? change.apply(each) : each)
                        .toList()));
    }

    /** Another holding of a set-up, made of the one that is written down. */
    static Job withHolding(DrawnUp drawnUp, String setUp, UnaryOperator<Holding> change) {
        return changedSetUp(
                drawnUp.job(), written(drawnUp), setUp, before -> before.withHolding(change.apply(before.holding())));
    }

    static Job changedSetUp(Job job, List<SetUp> all, String id, UnaryOperator<SetUp> change) {
        if (all.stream().noneMatch(setUp -> setUp.id().equals(id))) {
            throw missing("set-up", id);
        }
        return job.withPlan(job.plan()
                .withSetUps(all.stream()
                        .map(setUp -> setUp.id().equals(id) ? change.apply(setUp) : setUp)
                        .toList()));
    }

    private static <T> Operation inked(Operation before, DrawnOperation drawn, OperationField<T> field) {
        return field.ink().apply(before).standing() == Standing.PENCILLED
                ? field.write(before, Plannable.inked(field.drawn().apply(drawn).value()))
                : before;
    }

    private static Optional<SetUp> ofJob(Job job, String id) {
        return job.plan().setUps().stream()
                .filter(setUp -> setUp.id().equals(id))
                .findFirst();
    }

    private static DrawnOperation drawn(DrawnUp drawnUp, String operation) {
        return drawnUp.setUps().stream()
                .flatMap(setUp -> setUp.operation(operation).stream())
                .findFirst()
                .orElseThrow(() -> missing("operation", operation));
    }

    private static ViseHolding vise(SetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE -> (ViseHolding) setUp.holding();
            case UNDECIDED -> ViseHolding.pencilled();
            case TABLE, DEVICE -> throw new IllegalArgumentException("Set-up " + setUp.id() + " has no vise.");
        };
    }

    private static DrawnVise vise(DrawnSetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE -> (DrawnVise) setUp.holding();
            case TABLE, DEVICE -> throw new IllegalArgumentException("Set-up " + setUp.id() + " has no vise.");
        };
    }

    static IllegalArgumentException missing(String what, String id) {
        return new IllegalArgumentException("The drawn-up job has no " + what + " " + id + ".");
    }
}
