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
    public static final ViseField<String> JAWS = new ViseField<>("jaws", ViseHolding::jaws, DrawnVise::jaws);
    public static final ViseField<ViseHolding.JawCut> JAW_CUT =
            new ViseField<>("jawCut", ViseHolding::jawCut, DrawnVise::jawCut);
    public static final ViseField<Typed<Length>> JAW_CUT_DEPTH =
            new ViseField<>("jawCutDepth", ViseHolding::jawCutDepth, DrawnVise::jawCutDepth);
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
    public static final ViseField<ViseHolding.Between> BETWEEN =
            new ViseField<>("between", ViseHolding::between, DrawnVise::between);
    public static final ViseField<Integer> PARTS = new ViseField<>("parts", ViseHolding::parts, DrawnVise::parts);
    public static final ViseField<Integer> VISES = new ViseField<>("vises", ViseHolding::vises, DrawnVise::vises);
    public static final ViseField<Typed<Length>> APART = new ViseField<>("apart", ViseHolding::apart, DrawnVise::apart);

    public static List<ViseField<?>> all() {
        return List.of(
                VISE,
                SEAT,
                JAWS,
                JAW_CUT,
                JAW_CUT_DEPTH,
                PARALLELS,
                PARALLEL_HEIGHT,
                PARALLEL_INSET,
                GRIP,
                OFFSET,
                BETWEEN,
                PARTS,
                VISES,
                APART);
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
                change.of(JAWS),
                change.of(JAW_CUT),
                change.of(JAW_CUT_DEPTH),
                change.of(PARALLELS),
                change.of(PARALLEL_HEIGHT),
                change.of(PARALLEL_INSET),
                change.of(GRIP),
                change.of(OFFSET),
                change.of(BETWEEN),
                change.of(PARTS),
                change.of(VISES),
                change.of(APART),
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
