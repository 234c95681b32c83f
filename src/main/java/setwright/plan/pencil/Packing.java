package setwright.plan.pencil;

import setwright.job.ViseHolding;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A height of a set of parallels, as packing under the part; thickness in mm. */
record Packing(String set, Typed<Length> height, double thickness) {
    static final Packing NONE = new Packing(ViseHolding.NONE, new Typed<>("0 mm", new Length(0)), 0);
}
