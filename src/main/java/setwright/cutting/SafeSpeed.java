package setwright.cutting;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.FlyCutter;
import setwright.shop.HeadDial;
import setwright.shop.Holder;

/**
 * The fastest that a device or a cutter may turn.
 *
 * @param device in the shop's words
 * @param most rad/s
 * @param confirmed whether it stands in the shop's row; else it is a usual one
 */
public record SafeSpeed(String device, double most, boolean confirmed) {
    /** A drill chuck of 13 mm whose row says nothing, rev/min (from memory). */
    private static final double DRILL_CHUCK = 3000;

    /** Rim of a face mill that has no limit marked on it, m/s (from memory). */
    private static final double FACE_MILL_RIM = 30;

    /** A boring head whose row says nothing, its bar at full offset, rev/min (from memory). */
    private static final double BORING_HEAD = 500;

    /** The lower of holder and cutter; empty where neither has any. */
    public static Optional<SafeSpeed> of(Cutter cutter, @Nullable Holder holder) {
        return Stream.concat(holder == null ? Stream.of() : of(holder).stream(), of(cutter).stream())
                .min(Comparator.comparingDouble(SafeSpeed::most));
    }

    /** As {@link #of}, with a boring head as if its slide stood all the way out: what one plans with. */
    public static Optional<SafeSpeed> planned(Cutter cutter, @Nullable Holder holder) {
        return Stream.concat(of(cutter, holder).stream(), holder == null ? Stream.of() : farOut(holder).stream())
                .min(Comparator.comparingDouble(SafeSpeed::most));
    }

    private static Optional<SafeSpeed> farOut(Holder holder) {
        HeadDial head = holder.head();
        return head == null ? Optional.empty() : offset(holder, head.travel().inside());
    }

    /**
     * A boring head between its speed in the middle and that with the slide all the way out, in proportion (common practice).
     *
     * @param out how far the slide stands out of the middle, mm
     */
    public static Optional<SafeSpeed> offset(Holder holder, double out) {
        HeadDial head = holder.head();
        Typed<SpindleSpeed> centred = holder.fastest();
        Typed<SpindleSpeed> farthest = head == null ? null : head.fastestOffset();
        if (head == null || centred == null || farthest == null) {
            return Optional.empty();
        }
        double share = Math.min(1, out / head.travel().inside());
        double most = centred.inside() - share * (centred.inside() - farthest.inside());
        return Optional.of(new SafeSpeed(holder.name() + " out of the middle", most, true));
    }

    private static Optional<SafeSpeed> of(Holder holder) {
        Typed<SpindleSpeed> fastest = holder.fastest();
        if (fastest != null) {
            return Optional.of(new SafeSpeed(holder.name(), fastest.inside(), true));
        }
        return switch (holder.style()) {
            case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS -> Optional.of(usual(holder, DRILL_CHUCK));
            case BORING_HEAD -> Optional.of(usual(holder, BORING_HEAD));
            case SPINDLE_COLLET,
                    COLLET_CHUCK,
                    SET_SCREW,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER -> Optional.empty();
        };
    }

    private static SafeSpeed usual(Holder holder, double turns) {
        return new SafeSpeed(holder.name(), Unit.RPM.toInside(turns), false);
    }

    private static Optional<SafeSpeed> of(Cutter cutter) {
        if (cutter instanceof FlyCutter fly) {
            return Optional.of(new SafeSpeed(fly.name(), fly.fastest().inside(), true));
        }
        if (cutter.form() != Cutter.Form.FACE_MILL) {
            return Optional.empty();
        }
        double most = SpeedAndFeed.spindleSpeed(
                Unit.M_PER_S.toInside(FACE_MILL_RIM), cutter.diameter().inside());
        return Optional.of(new SafeSpeed(cutter.name(), most, false));
    }
}
