package setwright.job;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * The part between the jaws of a vise that stands along the table, solid jaw to the column.
 *
 * @param vise id of the vise's row
 * @param seat inner or outer seats of the jaws
 * @param jaws id of the row of other jaws that are on it; {@link #NONE}: its own
 * @param jawCut to what soft jaws are cut while they are clamped; jaws and vise are stamped with one number
 * @param jawCutDepth how deep below the jaw top they are cut
 * @param parallels id of the set under the part; {@link #NONE} for none
 * @param parallelHeight which height of the set
 * @param parallelInset outer face of each parallel to the nearer jaw; 0: against the jaw
 * @param grip how hard it is closed
 * @param offset middle of the part (of the row of parts) to the middle of the jaws, to the right
 * @param between what is put between the work and the moving jaw
 * @param parts how many are held side by side along the jaws
 * @param vises how many of this vise hold long work, side by side
 * @param apart middle of the first vise to that of the last
 * @param stops against which the part is pushed
 */
public record ViseHolding(
        Plannable<String> vise,
        Plannable<JawSeat> seat,
        Plannable<String> jaws,
        Plannable<JawCut> jawCut,
        Plannable<Typed<Length>> jawCutDepth,
        Plannable<String> parallels,
        Plannable<Typed<Length>> parallelHeight,
        Plannable<Typed<Length>> parallelInset,
        Plannable<GripAsked> grip,
        Plannable<Typed<Length>> offset,
        Plannable<Between> between,
        Plannable<Integer> parts,
        Plannable<Integer> vises,
        Plannable<Typed<Length>> apart,
        List<StopAt> stops)
        implements Holding {
    public ViseHolding {
        stops = List.copyOf(stops);
    }

    /** One part in one vise on its own jaws, nothing between, without a stop. */
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
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                parallels,
                parallelHeight,
                parallelInset,
                grip,
                offset,
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                List.of());
    }

    /** Written in place of a row where there is none: no parallels, the vise's own jaws. */
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

    /** What soft jaws are cut to while they are clamped. */
    public enum JawCut {
        UNCUT,
        /** A step that the part stands on, in place of parallels. */
        STEP,
        /** The part's own outline. */
        OUTLINE
    }

    /** What is put between the work and the moving jaw. */
    public enum Between {
        NOTHING,
        /** A round bar along the jaw: a rough or slanted side cannot turn the part off the solid jaw. */
        ROUND_BAR,
        /** A strip of soft metal or lead that evens out several parts. */
        SOFT_STRIP,
        /** Paper or thin brass on a finished side, at both jaws. */
        PAPER
    }

    public ViseHolding withStops(List<StopAt> changed) {
        return new ViseHolding(
                vise,
                seat,
                jaws,
                jawCut,
                jawCutDepth,
                parallels,
                parallelHeight,
                parallelInset,
                grip,
                offset,
                between,
                parts,
                vises,
                apart,
                changed);
    }

    @Override
    public Kind kind() {
        return Kind.VISE;
    }
}
