package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * The part on a device that stands on the table.
 *
 * @param on what kind of device it is
 * @param device id of its row; two of a pair are one row
 * @param x middle of the device to the middle of the table, to the right
 * @param y middle of the device to the middle of the table, to the column
 * @param angle at which it is set (angle plate, rotary table, angle blocks)
 * @param straps that hold the part on it; none where it grips by itself or the pencil lays them
 * @param stops against which the part is pushed
 */
public record DeviceHolding(
        On on,
        Plannable<String> device,
        Plannable<Typed<Length>> x,
        Plannable<Typed<Length>> y,
        @Nullable Typed<Angle> angle,
        List<Strapping> straps,
        List<StopAt> stops)
        implements Holding {
    public DeviceHolding {
        straps = List.copyOf(straps);
        stops = List.copyOf(stops);
    }

    public static DeviceHolding pencilled(On on) {
        return new DeviceHolding(
                on, Plannable.pencilled(), Plannable.pencilled(), Plannable.pencilled(), null, List.of(), List.of());
    }

    /** The kinds of device. */
    public enum On {
        V_BLOCKS,
        ANGLE_PLATE,
        FIXTURE_PLATE,
        SET_UP_BLOCKS,
        COLLET_BLOCK,
        ROTARY_TABLE,
        DIVIDING_HEAD,
        MAGNETIC_CHUCK
    }

    public DeviceHolding withStraps(List<Strapping> changed) {
        return new DeviceHolding(on, device, x, y, angle, changed, stops);
    }

    public DeviceHolding withStops(List<StopAt> changed) {
        return new DeviceHolding(on, device, x, y, angle, straps, changed);
    }

    @Override
    public Kind kind() {
        return Kind.DEVICE;
    }
}
