package setwright.plan.cut;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Band;
import setwright.rigidity.stability.Mode;
import setwright.rigidity.stability.QuietDepth;
import setwright.rigidity.stability.ToothCut;
import setwright.rigidity.stability.ZeroOrder;

/**
 * A milling pass and how the tip of its tool rings: all that its stability is worked out from.
 *
 * @param x the mode along the table's X, with what is expected of it
 * @param y the mode along the table's Y
 * @param soft factors of stiffness and damping at the end that rings soonest
 * @param stiff the same at the end that rings last
 * @param measured false where the modes are an estimate
 * @param speed rad/s
 * @param depth of the pass, mm
 */
public record RingingCut(
        ToothCut cut, Mode x, Mode y, Ends soft, Ends stiff, boolean measured, double speed, double depth) {
    /** Nothing beyond this many times the depth of the pass is looked at. */
    private static final double FAR = 3;

    /**
     * One end of a band of modes.
     *
     * @param stiffness over what is expected
     * @param damping as a share of the critical; 0: as expected
     */
    public record Ends(double stiffness, double damping) {
        static final Ends AS_EXPECTED = new Ends(1, 0);

        /** Stiffness moves the frequency with its root. */
        Mode of(Mode mode) {
            return new Mode(
                    mode.frequency() * Math.sqrt(stiffness),
                    damping == 0 ? mode.damping() : damping,
                    mode.stiffness() * stiffness);
        }
    }

    /** The mode that gives way first. */
    Mode weaker() {
        return x.stiffness() * x.damping() <= y.stiffness() * y.damping() ? x : y;
    }

    /** Up to which every speed is quiet, whichever way it feeds, mm. */
    double smallestDepth() {
        return Math.min(border(x, y).smallestDepth(), border(y, x).smallestDepth());
    }

    private ZeroOrder border(Mode along, Mode across) {
        return ZeroOrder.of(cut, along, across);
    }

    /** The lobe diagram whichever way it feeds: so many speeds, evenly spaced, by the zero-order border of the expected modes. */
    public List<ZeroOrder.Lobe> lobes(double from, double to, int count) {
        Quick border = quick();
        return border.one().lobes(from, to, count).stream()
                .map(lobe -> new ZeroOrder.Lobe(lobe.speed(), border.depthAt(lobe.speed())))
                .toList();
    }

    /** Up to which a speed is quiet by the zero-order border, whichever way it feeds. */
    Quick quick() {
        return new Quick(border(x, y), x.equals(y) ? null : border(y, x));
    }

    /** Borders that were walked once. */
    public record Quick(ZeroOrder one, @Nullable ZeroOrder other) {
        double depthAt(double speed) {
            return other == null ? one.depthAt(speed) : Math.min(one.depthAt(speed), other.depthAt(speed));
        }
    }

    /** Up to which its own speed is quiet: by the zero-order border of the expected modes and of the ends of their band. */
    Band quickBand() {
        double expected = capped(quick().depthAt(speed));
        double low = capped(with(soft).quick().depthAt(speed));
        double high = capped(with(stiff).quick().depthAt(speed));
        return new Band(Math.min(low, Math.min(expected, high)), expected, Math.max(high, Math.max(expected, low)));
    }

    private RingingCut with(Ends ends) {
        return new RingingCut(cut, ends.of(x), ends.of(y), Ends.AS_EXPECTED, Ends.AS_EXPECTED, measured, speed, depth);
    }

    private double capped(double found) {
        return Math.min(found, 100 * depth);
    }

    /** Up to which its own speed is quiet, tooth by tooth through the delayed map, mm. */
    double steppedDepth() {
        double one = new QuietDepth(cut, x, y).at(speed, FAR * depth);
        return x.equals(y) ? one : Math.min(one, new QuietDepth(cut, y, x).at(speed, FAR * depth));
    }

    /** Whether it rings at another speed, through the delayed map. */
    boolean rings(double other) {
        return new QuietDepth(cut, x, y).rings(other, depth)
                || !x.equals(y) && new QuietDepth(cut, y, x).rings(other, depth);
    }
}
