package setwright.shop;

import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;

/**
 * One range of a machine's gears or belts.
 *
 * @param name as it is written on the machine
 * @param speedLeast slowest speed in this range
 * @param speedGreatest fastest speed in this range
 * @param reverses whether the spindle turns the other way in this range with the switch in the same place
 */
public record GearRange(
        String name, Typed<SpindleSpeed> speedLeast, Typed<SpindleSpeed> speedGreatest, boolean reverses) {}
