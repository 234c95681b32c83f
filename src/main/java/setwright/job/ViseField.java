package setwright.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A plannable value of a vise holding: where it stands in the job, and where in the drawn-up job.
 *
 * @param key as a place names it, for instance {@code s1/holding/parallelHeight}
 */
public record ViseField<T>(String key, Function<ViseHolding, Plannable<T>> ink, Function<DrawnVise, Drawn<T>> drawn) {

    public static final ViseField<String> VISE = new ViseField<>("vise", ViseHolding::vise, DrawnVise::vise);
    public static final ViseField<ViseHolding.JawSeat> SEAT =
            new ViseField<>("seat", ViseHolding::seat, DrawnVise::seat);
    public static final ViseField<String> PARALLELS =
            new ViseField<>("parallels", ViseHolding::parallels, DrawnVise::parallels);
    public static final ViseField<Typed<Length>> PARALLEL_HEIGHT =
            new ViseField<>("parallelHeight", ViseHolding::parallelHeight, DrawnVise::parallelHeight);
    public static final ViseField<Typed<Length>> PARALLEL_INSET =
            new ViseField<>("parallelInset", ViseHolding::parallelInset, DrawnVise::parallelInset);
    public static final ViseField<ViseHolding.GripAsked> GRIP =
            new ViseField<>("grip", ViseHolding::grip, DrawnVise::grip);
    public static final ViseField<Typed<Length>> OFFSET =
            new ViseField<>("offset", ViseHolding::offset, DrawnVise::offset);
    public static final ViseField<Integer> PARTS = new ViseField<>("parts", ViseHolding::parts, DrawnVise::parts);

    public static List<ViseField<?>> all() {
        return List.of(VISE, SEAT, PARALLELS, PARALLEL_HEIGHT, PARALLEL_INSET, GRIP, OFFSET, PARTS);
    }

    public static Optional<ViseField<?>> of(String key) {
        return all().stream().filter(field -> field.key.equals(key)).findFirst();
    }

    /** The holding with this value in the field, all others kept. */
    public ViseHolding write(ViseHolding holding, Plannable<T> value) {
        Change<T> change = new Change<>(this, holding, value);
        return new ViseHolding(
                change.of(VISE),
                change.of(SEAT),
                change.of(PARALLELS),
                change.of(PARALLEL_HEIGHT),
                change.of(PARALLEL_INSET),
                change.of(GRIP),
                change.of(OFFSET),
                holding.jaws(),
                change.of(PARTS),
                holding.stops());
    }

    private record Change<C>(ViseField<C> changed, ViseHolding before, Plannable<C> value) {
        /** The new value where the field is the one that changes; then both are of one type. */
        @SuppressWarnings("unchecked")
        <T> Plannable<T> of(ViseField<T> field) {
            return field.equals(changed) ? (Plannable<T>) value : field.ink().apply(before);
        }
    }
}
