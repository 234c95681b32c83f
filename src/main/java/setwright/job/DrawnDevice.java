package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** The drawn-up holding of a part on a device. */
public record DrawnDevice(
        DeviceHolding.On on,
        Drawn<String> device,
        Drawn<Typed<Length>> x,
        Drawn<Typed<Length>> y,
        Drawn<DeviceHolding.Stance> stance,
        Drawn<String> vise,
        Drawn<DeviceHolding.Fastening> fastening,
        Drawn<String> gear,
        Drawn<String> tail,
        Drawn<DeviceHolding.Located> located,
        @Nullable Typed<Angle> angle,
        List<DrawnStrap> straps,
        List<StopAt> stops)
        implements DrawnHolding {
    public DrawnDevice {
        straps = List.copyOf(straps);
        stops = List.copyOf(stops);
    }

    /** The same held by these. */
    public DrawnDevice with(List<DrawnStrap> strapped) {
        return new DrawnDevice(on, device, x, y, stance, vise, fastening, gear, tail, located, angle, strapped, stops);
    }

    /** Whether it stands in a vise instead of on bolts of its own. */
    public boolean inVise() {
        return !vise.value().equals(ViseHolding.NONE);
    }

    public boolean upright() {
        return stance.value() == DeviceHolding.Stance.UPRIGHT;
    }

    @Override
    public Kind kind() {
        return Kind.DEVICE;
    }
}
