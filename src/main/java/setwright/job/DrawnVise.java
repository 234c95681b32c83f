package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
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
        Drawn<Typed<Length>> offset,
        @Nullable String jaws,
        Drawn<Integer> parts,
        List<StopAt> stops)
        implements DrawnHolding {
    public DrawnVise {
        stops = List.copyOf(stops);
    }

    /** One part on plain jaws, without a stop. */
    public DrawnVise(
            Drawn<String> vise,
            Drawn<ViseHolding.JawSeat> seat,
            Drawn<String> parallels,
            Drawn<Typed<Length>> parallelHeight,
            Drawn<Typed<Length>> parallelInset,
            Drawn<ViseHolding.GripAsked> grip,
            Drawn<Typed<Length>> offset) {
        this(
                vise,
                seat,
                parallels,
                parallelHeight,
                parallelInset,
                grip,
                offset,
                null,
                new Drawn<>(1, Standing.PENCILLED),
                List.of());
    }

    public boolean onParallels() {
        return !ViseHolding.NONE.equals(parallels.value());
    }

    @Override
    public Kind kind() {
        return Kind.VISE;
    }
}
