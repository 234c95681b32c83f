package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;

/**
 * What sits between spindle and cutter.
 *
 * @param style what it is
 * @param taper the spindle taper that it fits
 * @param projection spindle nose (gauge line) to the holder's own nose
 * @param noseDiameter largest diameter at the holder's nose (nut, chuck sleeve); what must clear
 * @param shankLeast smallest shank that it takes
 * @param shankGreatest largest shank that it takes
 * @param grip length of shank that it grips
 * @param runOutLow total indicated run-out at its nose, good end
 * @param runOutHigh total indicated run-out at its nose, poor end
 * @param dropOut free height below the nose to get it out of the spindle with its tool gripped; null: only the
 *     tool's grip has to come out
 * @param fastest speed that it is safe to run at; null where no limit is known
 * @param keepsLength whether a tool put back comes to the same length
 * @param head dial and slide of a boring head; null for everything else, and where nobody looked
 */
public record Holder(
        String id,
        String name,
        Style style,
        Taper taper,
        Typed<Length> projection,
        Typed<Length> noseDiameter,
        Typed<Length> shankLeast,
        Typed<Length> shankGreatest,
        Typed<Length> grip,
        Typed<Length> runOutLow,
        Typed<Length> runOutHigh,
        @Nullable Typed<Length> dropOut,
        @Nullable Typed<SpindleSpeed> fastest,
        boolean keepsLength,
        @Nullable HeadDial head,
        Kept kept,
        String source)
        implements Owned {

    /** A holder without a dial. */
    public Holder(
            String id,
            String name,
            Style style,
            Taper taper,
            Typed<Length> projection,
            Typed<Length> noseDiameter,
            Typed<Length> shankLeast,
            Typed<Length> shankGreatest,
            Typed<Length> grip,
            Typed<Length> runOutLow,
            Typed<Length> runOutHigh,
            @Nullable Typed<Length> dropOut,
            @Nullable Typed<SpindleSpeed> fastest,
            boolean keepsLength,
            Kept kept,
            String source) {
        this(
                id,
                name,
                style,
                taper,
                projection,
                noseDiameter,
                shankLeast,
                shankGreatest,
                grip,
                runOutLow,
                runOutHigh,
                dropOut,
                fastest,
                keepsLength,
                null,
                kept,
                source);
    }

    /** What a holder is; decides what it may hold and what it can take. */
    public enum Style {
        SPINDLE_COLLET,
        COLLET_CHUCK,
        SET_SCREW,
        DRILL_CHUCK_KEYED,
        DRILL_CHUCK_KEYLESS,
        FACE_MILL_ARBOR,
        SCREWED_SHANK_CHUCK,
        SHRINK,
        SHELL_MILL_ARBOR,
        FLY_CUTTER_BODY,
        BORING_HEAD,
        STUB_ARBOR,
        TAPER_SOCKET,
        TAPPING_HEAD,
        FLOATING_REAMER_HOLDER
    }

    @Override
    public Kind kind() {
        return Kind.HOLDER;
    }
}
