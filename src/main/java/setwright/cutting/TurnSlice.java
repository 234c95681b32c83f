package setwright.cutting;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A length of the edges of a cutter whose teeth all cut over one arc at one radius: the whole of a cylindrical cutter, a
 * slice of any other.
 */
final class TurnSlice {
    private static final double NO_LAG = 1e-7;

    private final MillingCut cut;
    /** Of each tooth; one that stands for all where they are alike. */
    private final List<ChipIntegrals> chips = new ArrayList<>();

    private final double start;
    private final double exit;
    /** From the bottom of the slice to its top. */
    private final double lag;
    /** From the tip of the tooth to the bottom of the slice. */
    private final double behind;

    /** @param behind how far the bottom of the slice lags behind the tip of its tooth, rad */
    TurnSlice(MillingCut cut, double behind, EdgeForce law, @Nullable UnevenTeeth teeth, int cells) {
        this.cut = cut;
        this.behind = behind;
        start = cut.engagement().start();
        exit = cut.engagement().exit();
        lag = cut.cutter().lag(cut.axialDepth());
        if (teeth == null) {
            chips.add(new ChipIntegrals(cut, law, cells));
            return;
        }
        UnevenTeeth square = teeth.times(StrictMath.cos(cut.cutter().leadAngle()));
        for (int tooth = 0; tooth < teeth.teeth(); tooth++) {
            chips.add(new ChipIntegrals(cut, SharedForce.of(law, square, tooth), cells));
        }
    }

    /** The tip angles at which an edge begins or ceases to touch the arc of this slice, or to fill it. */
    double[] corners() {
        return new double[] {start + behind, exit + behind, start + behind + lag, exit + behind + lag};
    }

    /** Adds the force of all teeth, the tip of the first at an angle, each other's a pitch farther on. */
    void addAll(double angle, double[] to) {
        double pitch = cut.cutter().pitch();
        double bottom = angle - behind;
        double last = Math.max(exit, exit + lag);
        int before = (int) Math.ceil((Math.min(start, start + lag) - bottom) / pitch);
        for (int tooth = before; bottom + tooth * pitch <= last; tooth++) {
            addEdge(chipsOf(tooth), bottom + tooth * pitch, to);
        }
    }

    /** Adds the force of the first tooth alone. */
    void addFirst(double angle, double[] to) {
        double turn = 2 * Math.PI;
        double bottom = angle - behind;
        double last = Math.max(exit, exit + lag);
        double first = Math.min(start, start + lag);
        for (double at = bottom + turn * Math.ceil((first - bottom) / turn); at <= last; at += turn) {
            addEdge(chips.get(0), at, to);
        }
    }

    /** Adds the mean over a turn: each tooth goes through the whole arc once, whatever its helix. */
    void addMean(double[] to) {
        double[] sum = new double[ChipIntegrals.PARTS];
        double alike = (double) cut.cutter().teeth() / chips.size();
        for (ChipIntegrals tooth : chips) {
            tooth.addSum(exit, alike * cut.axialDepth() / (2 * Math.PI), sum);
        }
        add(sum, to);
    }

    private ChipIntegrals chipsOf(int tooth) {
        return chips.get(Math.floorMod(tooth, chips.size()));
    }

    private void addEdge(ChipIntegrals tooth, double bottom, double[] to) {
        double from = within(Math.min(bottom, bottom - lag));
        double until = within(Math.max(bottom, bottom - lag));
        boolean upright = Math.abs(lag) < NO_LAG;
        if (upright ? bottom < start || bottom >= exit : from >= until) {
            return;
        }
        double[] sum = new double[ChipIntegrals.PARTS];
        if (upright) {
            tooth.addForce(bottom, cut.axialDepth(), sum);
        } else {
            double scale = cut.axialDepth() / Math.abs(lag);
            tooth.addSum(until, scale, sum);
            tooth.addSum(from, -scale, sum);
        }
        add(sum, to);
    }

    private double within(double angle) {
        return Math.min(Math.max(angle, start), exit);
    }

    /** The tangential force becomes a torque. */
    private void add(double[] sum, double[] to) {
        to[0] += sum[0];
        to[1] += sum[1];
        to[2] += sum[2];
        to[3] += sum[3] * cut.cutter().radius();
    }
}
