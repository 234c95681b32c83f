package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A cutter without a shank of its own: it has a bore and sits on an arbor, its edges as long as it is wide. */
public sealed interface BoredCutter extends Cutter permits ShellMill, SlittingSaw, FormCutter {
    /** Diameter of the hole that sits on its arbor. */
    Typed<Length> bore();

    /** From face to face along the axis. */
    Typed<Length> width();

    @Override
    default Typed<Length> shank() {
        return bore();
    }

    @Override
    default ShankForm shankForm() {
        return ShankForm.BORE;
    }

    @Override
    default Typed<Length> fluteLength() {
        return width();
    }

    @Override
    default Typed<Length> overallLength() {
        return width();
    }
}
