package setwright.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/**
 * A plannable value of a strap: where it stands in the job, and where in the drawn-up job.
 *
 * @param key as a place names it, for instance {@code s1/holding/straps/strap1/heelOver}
 */
public record StrapField<T>(String key, Function<Strapping, Plannable<T>> ink, Function<DrawnStrap, Drawn<T>> drawn) {

    public static final StrapField<Strapping.By> BY = new StrapField<>("by", Strapping::by, DrawnStrap::by);
    public static final StrapField<String> STRAP = new StrapField<>("strap", Strapping::strap, DrawnStrap::strap);
    public static final StrapField<String> STUD = new StrapField<>("stud", Strapping::stud, DrawnStrap::stud);
    public static final StrapField<String> WASHER = new StrapField<>("washer", Strapping::washer, DrawnStrap::washer);
    public static final StrapField<Strapping.Pad> PAD = new StrapField<>("pad", Strapping::pad, DrawnStrap::pad);
    public static final StrapField<Typed<Length>> U = new StrapField<>("u", Strapping::u, DrawnStrap::u);
    public static final StrapField<Typed<Length>> V = new StrapField<>("v", Strapping::v, DrawnStrap::v);
    public static final StrapField<Typed<Angle>> TOWARD =
            new StrapField<>("toward", Strapping::toward, DrawnStrap::toward);
    public static final StrapField<Typed<Length>> PAD_TO_STUD =
            new StrapField<>("padToStud", Strapping::padToStud, DrawnStrap::padToStud);
    public static final StrapField<Typed<Length>> STUD_TO_HEEL =
            new StrapField<>("studToHeel", Strapping::studToHeel, DrawnStrap::studToHeel);
    public static final StrapField<Typed<Length>> HEEL_OVER =
            new StrapField<>("heelOver", Strapping::heelOver, DrawnStrap::heelOver);
    public static final StrapField<Typed<Torque>> TORQUE =
            new StrapField<>("torque", Strapping::torque, DrawnStrap::torque);

    public static List<StrapField<?>> all() {
        return List.of(BY, STRAP, STUD, WASHER, PAD, U, V, TOWARD, PAD_TO_STUD, STUD_TO_HEEL, HEEL_OVER, TORQUE);
    }

    public static Optional<StrapField<?>> of(String key) {
        return all().stream().filter(field -> field.key.equals(key)).findFirst();
    }

    /** The strap with this value in the field, all others kept. */
    public Strapping write(Strapping strap, Plannable<T> value) {
        Change<T> change = new Change<>(this, strap, value);
        return new Strapping(
                strap.id(),
                change.of(BY),
                change.of(STRAP),
                change.of(STUD),
                change.of(WASHER),
                change.of(PAD),
                change.of(U),
                change.of(V),
                change.of(TOWARD),
                change.of(PAD_TO_STUD),
                change.of(STUD_TO_HEEL),
                change.of(HEEL_OVER),
                change.of(TORQUE));
    }

    private record Change<C>(StrapField<C> changed, Strapping before, Plannable<C> value) {
        /** The new value where the field is the one that changes; then both are of one type. */
        @SuppressWarnings("unchecked")
        <T> Plannable<T> of(StrapField<T> field) {
            return field.equals(changed) ? (Plannable<T>) value : field.ink().apply(before);
        }
    }
}
