package setwright.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Typed;

/**
 * A plannable value of an operation: where it stands in the job, and where in the drawn-up job.
 *
 * @param key as a place names it, for instance {@code s1/o3/stickOut}
 */
public record OperationField<T>(
        String key, Function<Operation, Plannable<T>> ink, Function<DrawnOperation, Drawn<T>> drawn) {

    public static final OperationField<String> CUTTER =
            new OperationField<>("cutter", Operation::cutter, DrawnOperation::cutter);
    public static final OperationField<String> HOLDER =
            new OperationField<>("holder", Operation::holder, DrawnOperation::holder);
    public static final OperationField<Typed<Length>> STICK_OUT =
            new OperationField<>("stickOut", Operation::stickOut, DrawnOperation::stickOut);
    public static final OperationField<Typed<Length>> DEPTH =
            new OperationField<>("depth", Operation::depth, DrawnOperation::depth);
    public static final OperationField<Typed<Length>> WIDTH =
            new OperationField<>("width", Operation::width, DrawnOperation::width);
    public static final OperationField<Typed<Length>> FINISH =
            new OperationField<>("finish", Operation::finish, DrawnOperation::finish);
    public static final OperationField<Operation.LastPass> LAST_PASS =
            new OperationField<>("lastPass", Operation::lastPass, DrawnOperation::lastPass);
    public static final OperationField<Typed<Time>> TOOL_LIFE =
            new OperationField<>("toolLife", Operation::toolLife, DrawnOperation::toolLife);
    public static final OperationField<Operation.Direction> DIRECTION =
            new OperationField<>("direction", Operation::direction, DrawnOperation::direction);
    public static final OperationField<Operation.Coolant> COOLANT =
            new OperationField<>("coolant", Operation::coolant, DrawnOperation::coolant);
    public static final OperationField<Operation.Method> METHOD =
            new OperationField<>("method", Operation::method, DrawnOperation::method);
    public static final OperationField<Typed<SpindleSpeed>> SPEED =
            new OperationField<>("speed", Operation::speed, DrawnOperation::speed);
    public static final OperationField<Typed<Speed>> FEED =
            new OperationField<>("feed", Operation::feed, DrawnOperation::feed);
    public static final OperationField<Typed<Length>> KNEE_HEIGHT =
            new OperationField<>("kneeHeight", Operation::kneeHeight, DrawnOperation::kneeHeight);

    public static List<OperationField<?>> all() {
        return List.of(
                CUTTER,
                HOLDER,
                STICK_OUT,
                DEPTH,
                WIDTH,
                FINISH,
                LAST_PASS,
                TOOL_LIFE,
                DIRECTION,
                COOLANT,
                METHOD,
                SPEED,
                FEED,
                KNEE_HEIGHT);
    }

    public static Optional<OperationField<?>> of(String key) {
        return all().stream().filter(field -> field.key.equals(key)).findFirst();
    }

    /** The operation with this value in the field, all others kept. */
    public Operation write(Operation operation, Plannable<T> value) {
        Change<T> change = new Change<>(this, operation, value);
        return new Operation(
                operation.id(),
                operation.kind(),
                operation.features(),
                change.of(CUTTER),
                change.of(HOLDER),
                change.of(STICK_OUT),
                change.of(DEPTH),
                change.of(WIDTH),
                change.of(FINISH),
                change.of(LAST_PASS),
                change.of(TOOL_LIFE),
                change.of(DIRECTION),
                change.of(COOLANT),
                change.of(METHOD),
                change.of(SPEED),
                change.of(FEED),
                change.of(KNEE_HEIGHT),
                operation.reason());
    }

    private record Change<C>(OperationField<C> changed, Operation before, Plannable<C> value) {
        /** The new value where the field is the one that changes; then both are of one type. */
        @SuppressWarnings("unchecked")
        <T> Plannable<T> of(OperationField<T> field) {
            return field.equals(changed) ? (Plannable<T>) value : field.ink().apply(before);
        }
    }
}
