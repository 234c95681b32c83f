package setwright.job;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A vise holding as drawn up; see {@link ViseHolding} for what each value is. */
public record DrawnVise(
        Drawn<String> vise,
        Drawn<ViseHolding.JawSeat> seat,
        Drawn<String> jaws,
        Drawn<ViseHolding.JawCut> jawCut,
        Drawn<Typed<Length>> jawCutDepth,
        Drawn<String> parallels,
        Drawn<Typed<Length>> parallelHeight,
        Drawn<Typed<Length>> parallelInset,
        Drawn<ViseHolding.GripAsked> grip,
        Drawn<Typed<Length>> offset,
        Drawn<ViseHolding.Between> between,
        Drawn<Integer> parts,
        Drawn<Integer> vises,
        Drawn<Typed<Length>> apart,
        List<StopAt> stops)
        implements DrawnHolding {
    private static final Typed<Length> NOUGHT = new Typed<>("0 mm", new Length(0));

    public DrawnVise {
        stops = List.copyOf(stops);
    }

    /** One part in one vise on plain jaws, without a stop. */
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
                open(ViseHolding.NONE),
                open(ViseHolding.JawCut.UNCUT),
                open(NOUGHT),
                parallels,
                parallelHeight,
                parallelInset,
                grip,
                offset,
                open(ViseHolding.Between.NOTHING),
                open(1),
                open(1),
                open(NOUGHT),
                List.of());
    }

    private static <T> Drawn<T> open(T value) {
        return new Drawn<>(value, Standing.PENCILLED);
    }

    public boolean onParallels() {
        return !ViseHolding.NONE.equals(parallels.value());
    }

    /** Whether other jaws are screwed on than the vise's own. */
    public boolean otherJaws() {
        return !ViseHolding.NONE.equals(jaws.value());
    }

    @Override
    public Kind kind() {
        return Kind.VISE;
    }
}
