package setwright.shop;

import setwright.quantity.Stiffness;
import setwright.quantity.Typed;

/** A stiffness that is only known as a band: soft end, expected, stiff end. */
public record StiffnessBand(Typed<Stiffness> low, Typed<Stiffness> expected, Typed<Stiffness> high) {}
