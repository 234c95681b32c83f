package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * The part between the jaws of a vise that stands along the table, solid jaw to the column.
 *
 * @param vise id of the vise's row
 * @param seat inner or outer seats of the jaws
 * @param parallels id of the set under the part; {@link #NONE} for none
 * @param parallelHeight which height of the set
 * @param parallelInset outer face of each parallel to the nearer jaw; 0: against the jaw
 * @param grip how hard it is closed
 * @param offset middle of the part (of the row of parts) to the middle of the jaws, to the right
 * @param jaws id of the row of other jaws that are on it; null: its own
 * @param parts how many are held side by side along the jaws
 * @param stops against which the part is pushed
 */
public record ViseHolding(
        Plannable<String> vise,
        Plannable<JawSeat> seat,
        Plannable<String> parallels,
        Plannable<Typed<Length>> parallelHeight,
        Plannable<Typed<Length>> parallelInset,
        Plannable<GripAsked> grip,
        Plannable<Typed<Length>> offset,
        @Nullable String jaws,
        Plannable<Integer> parts,
        List<StopAt> stops)
        implements Holding {
    public ViseHolding {
        stops = List.copyOf(stops);
    }

    /** One part on the vise's own jaws, without a stop. */
    public ViseHolding(
            Plannable<String> vise,
            Plannable<JawSeat> seat,
            Plannable<String> parallels,
            Plannable<Typed<Length>> parallelHeight,
            Plannable<Typed<Length>> parallelInset,
            Plannable<GripAsked> grip,
            Plannable<Typed<Length>> offset) {
        this(
                vise,
                seat,
                parallels,
                parallelHeight,
                parallelInset,
                grip,
                offset,
                null,
                Plannable.pencilled(),
                List.of());
    }

    /** Written in place of a set of parallels where the part sits on the vise bed. */
    public static final String NONE = "none";

    public static ViseHolding pencilled() {
        return new ViseHolding(
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled());
    }

    /** Where the jaws are screwed on. */
    public enum JawSeat {
        INBOARD,
        OUTBOARD
    }

    /** How hard the vise is closed, as asked at the handle; never a handle torque. */
    public enum GripAsked {
        SNUG,
        FIRM,
        HARD
    }

    public ViseHolding withStops(List<StopAt> changed) {
        return new ViseHolding(
                vise, seat, parallels, parallelHeight, parallelInset, grip, offset, jaws, parts, changed);
    }

    @Override
    public Kind kind() {
        return Kind.VISE;
    }
}
