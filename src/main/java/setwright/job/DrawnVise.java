package setwright.job;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A vise holding as drawn up; see {@link ViseHolding} for what each value is. */
public record DrawnVise(
        Drawn<String> vise,
        Drawn<ViseHolding.JawSeat> seat,
        Drawn<String> parallels,
        Drawn<Typed<Length>> parallelHeight,
        Drawn<Typed<Length>> parallelInset,
        Drawn<ViseHolding.GripAsked> grip,
        Drawn<Typed<Length>> offset)
        implements DrawnHolding {

    public boolean onParallels() {
        return !ViseHolding.NONE.equals(parallels.value());
    }

    @Override
    public Holding.Kind kind() {
        return Holding.Kind.VISE;
    }
}
