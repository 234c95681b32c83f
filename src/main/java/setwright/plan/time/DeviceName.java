package setwright.plan.time;

import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnVise;

/** The id of the device that a holding bolts to the table. */
final class DeviceName {
    private DeviceName() {}

    static String of(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> ((DrawnVise) holding).vise().value();
            case DEVICE -> ((DrawnDevice) holding).device().value();
            case TABLE -> "";
        };
    }
}
