package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;

/**
 * One range of a machine's gears or belts.
 *
 * @param name as it is written on the machine
 * @param speedLeast slowest speed in this range
 * @param speedGreatest fastest speed in this range
 * @param reverses whether the spindle turns the other way in this range with the switch in the same place
 * @param fullPowerFrom from which speed of this range on a variable drive gives its whole power, below it the torque of
 *     that speed; null: not known
 */
public record GearRange(
        String name,
        Typed<SpindleSpeed> speedLeast,
        Typed<SpindleSpeed> speedGreatest,
        boolean reverses,
        @Nullable Typed<SpindleSpeed> fullPowerFrom) {}
