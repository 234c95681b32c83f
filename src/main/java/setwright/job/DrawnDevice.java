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
        @Nullable Typed<Angle> angle,
        List<DrawnStrap> straps,
        List<StopAt> stops)
        implements DrawnHolding {
    public DrawnDevice {
        straps = List.copyOf(straps);
        stops = List.copyOf(stops);
    }

    @Override
    public Kind kind() {
        return Kind.DEVICE;
    }
}
