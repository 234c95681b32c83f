package setwright.shop;

import setwright.quantity.Frequency;
import setwright.quantity.Ratio;
import setwright.quantity.Stiffness;
import setwright.quantity.Typed;

/**
 * One way in which a tip rings, as it was measured.
 *
 * @param damping as a share of the critical
 * @param stiffness of the mode, at the tip
 */
public record MeasuredMode(Typed<Frequency> frequency, Typed<Ratio> damping, Typed<Stiffness> stiffness) {}
