package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A machine table with its T-slots along X: size, number of slots, their width and pitch. */
public record MachineTable(
        Typed<Length> length, Typed<Length> width, int slots, Typed<Length> slotWidth, Typed<Length> slotPitch) {}
