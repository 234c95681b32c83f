package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.Typed;

/**
 * One slide of a machine.
 *
 * @param travel how far it goes
 * @param read by a readout or by the dial
 * @param perTurn travel of one turn of the handle
 * @param division one division of the dial
 * @param backlash lost motion of the screw
 * @param feedLeast slowest power feed; null where the axis is wound by hand
 * @param feedGreatest fastest power feed; null where the axis is wound by hand
 */
public record Axis(
        Typed<Length> travel,
        ReadBy read,
        Typed<Length> perTurn,
        Typed<Length> division,
        Typed<Length> backlash,
        @Nullable Typed<Speed> feedLeast,
        @Nullable Typed<Speed> feedGreatest) {

    /** How a position is read. */
    public enum ReadBy {
        DIAL,
        READOUT
    }

    public boolean powerFeed() {
        return feedLeast != null && feedGreatest != null;
    }
}
