package setwright.job;

import java.util.List;
import java.util.function.Function;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A plannable value of a holding on a device: where it stands in the job, and where in the drawn-up job.
 *
 * @param key as a place names it, for instance {@code s1/holding/device}
 */
public record DeviceField<T>(
        String key, Function<DeviceHolding, Plannable<T>> ink, Function<DrawnDevice, Drawn<T>> drawn) {

    public static final DeviceField<String> DEVICE =
            new DeviceField<>("device", DeviceHolding::device, DrawnDevice::device);
    public static final DeviceField<Typed<Length>> X = new DeviceField<>("x", DeviceHolding::x, DrawnDevice::x);
    public static final DeviceField<Typed<Length>> Y = new DeviceField<>("y", DeviceHolding::y, DrawnDevice::y);

    public static final DeviceField<DeviceHolding.Stance> STANCE =
            new DeviceField<>("stance", DeviceHolding::stance, DrawnDevice::stance);
    public static final DeviceField<String> VISE = new DeviceField<>("vise", DeviceHolding::vise, DrawnDevice::vise);
    public static final DeviceField<DeviceHolding.Fastening> FASTENING =
            new DeviceField<>("fastening", DeviceHolding::fastening, DrawnDevice::fastening);
    public static final DeviceField<String> GEAR = new DeviceField<>("gear", DeviceHolding::gear, DrawnDevice::gear);
    public static final DeviceField<String> TAIL = new DeviceField<>("tail", DeviceHolding::tail, DrawnDevice::tail);
    public static final DeviceField<DeviceHolding.Located> LOCATED =
            new DeviceField<>("located", DeviceHolding::located, DrawnDevice::located);

    public static List<DeviceField<?>> all() {
        return List.of(DEVICE, X, Y, STANCE, VISE, FASTENING, GEAR, TAIL, LOCATED);
    }

    /** The holding with this value in the field, all others kept. */
    public DeviceHolding write(DeviceHolding holding, Plannable<T> value) {
        Change<T> change = new Change<>(this, holding, value);
        return new DeviceHolding(
                holding.on(),
                change.of(DEVICE),
                change.of(X),
                change.of(Y),
                change.of(STANCE),
                change.of(VISE),
                change.of(FASTENING),
                change.of(GEAR),
                change.of(TAIL),
                change.of(LOCATED),
                holding.angle(),
                holding.straps(),
                holding.stops());
    }

    private record Change<C>(DeviceField<C> changed, DeviceHolding before, Plannable<C> value) {
        /** The new value where the field is the one that changes; then both are of one type. */
        @SuppressWarnings("unchecked")
        <T> Plannable<T> of(DeviceField<T> field) {
            return field.equals(changed) ? (Plannable<T>) value : field.ink().apply(before);
        }
    }
}
