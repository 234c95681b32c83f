package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/**
 * A tapped blind hole; millimetres.
 *
 * @param fullThread depth of full thread
 * @param lead threads of lead of the tap
 * @param chipRoom for the chips that stay below: one diameter for a straight flute, nothing for a spiral one
 */
public record BlindTap(double fullThread, double lead, double pitch, double chipRoom) {
    private static final Symbol FULL_THREAD = symbol("t", "depth of full thread", Unit.MM, 1, 100);
    private static final Symbol LEAD = symbol("n", "threads of lead", Unit.NONE, 1, 10);
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.2, 6);
    private static final Symbol CHIP_ROOM = symbol("c", "chip room", Unit.MM, 0, 40);

    /** Depth of the drill at full diameter; its point comes below. */
    public static final Formula DRILL_DEPTH = new Formula(
            "T = t + (n + 1) P + c",
            symbol("T", "drill depth before the tap", Unit.MM, 0, 300),
            List.of(FULL_THREAD, LEAD, PITCH, CHIP_ROOM),
            v -> new BlindTap(v[0], v[1], v[2], v[3]).drillDepth(),
            Source.of("Minimum tap drill depth, tech tip"
                    + " (cutting-tool-supply.com/tech-tips/tapping/min-tap-drill-depth/); chip room common practice"));
    /** A second opinion without regard to the tap. */
    public static final Table BS_1936 = new Table(
            "tapping clearance depth",
            "0.25 of the depth of full thread below 6 mm, 0.2 from 6 to 12 mm, 0.15 above",
            Unit.MM,
            Source.of("BS 1936 as quoted at roymech.org/Useful_Tables/Screws.html"));

    public double drillDepth() {
        return fullThread + (lead + 1) * pitch + chipRoom;
    }

    /** What the tap has left before its lead meets the bottom of a hole drilled to a depth; negative where it bottoms. */
    public double spare(double drilledDepth) {
        return drilledDepth - drillDepth();
    }

    /** The clearance below the full thread after BS 1936. */
    public static double bs1936Clearance(double diameter, double fullThread) {
        return fullThread * (diameter < 6 ? 0.25 : diameter <= 12 ? 0.2 : 0.15);
    }
}
