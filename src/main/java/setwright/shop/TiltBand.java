package setwright.shop;

import setwright.quantity.Torque;
import setwright.quantity.Typed;

/** The torque that tilts a joint, for each radian, as a band: soft end, expected, stiff end. */
public record TiltBand(Typed<Torque> low, Typed<Torque> expected, Typed<Torque> high) {}
