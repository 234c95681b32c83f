package setwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * Looks over a turn for the largest of a force that repeats with a period. Between the angles where an edge comes into
 * the cut or leaves it, the force is smooth; at them it may jump or bend, so both sides of each are looked at.
 */
final class TurnSearch {
    /** How close to a corner its two sides are looked at, rad. */
    static final double BESIDE = 1e-9;

    private static final double STEP = StrictMath.toRadians(7.5);
    private static final int LEAST_STEPS = 4;
    /** Between corners that lie closer than the least steps of this size fewer do. */
    private static final double FINEST = StrictMath.toRadians(2.5);

    /** Share of the largest sample from which on a crest of the samples may hide the peak. */
    private static final double NEAR = 0.95;

    private static final int NARROWINGS = 8;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final DoubleFunction<CutForce> force;
    private final double period;
    private final List<TurnPoint> samples = new ArrayList<>();
    private final List<TurnPoint> peaks = new ArrayList<>();

    TurnSearch(DoubleFunction<CutForce> force, double[] corners, double period) {
        this.force = force;
        this.period = period;
        double[] sorted = Arrays.stream(corners).map(this::turnedBack).sorted().toArray();
        for (int i = 0; i < sorted.length; i++) {
            double next = i + 1 < sorted.length ? sorted[i + 1] : sorted[0] + period;
            sample(sorted[i] + BESIDE, next - BESIDE);
        }
    }

    private void sample(double from, double to) {
        if (to <= from) {
            return;
        }
        int least = Math.min(LEAST_STEPS, (int) Math.ceil((to - from) / FINEST));
        int steps = Math.max(least, (int) Math.ceil((to - from) / STEP));
        for (int i = 0; i <= steps; i++) {
            samples.add(point(from + (to - from) * i / steps));
        }
    }

    /** The sampled points with the peaks that were found, by angle. */
    List<TurnPoint> points() {
        List<TurnPoint> all = new ArrayList<>(samples);
        all.addAll(peaks);
        all.sort(Comparator.comparingDouble(TurnPoint::angle));
        return List.copyOf(all);
    }

    /** The largest of the samples, after each that comes near it was narrowed down between its neighbours. */
    TurnPoint peak(ToDoubleFunction<CutForce> size) {
        TurnPoint found = samples.get(0);
        for (TurnPoint sample : samples) {
            found = larger(found, sample, size);
        }
        double near = NEAR * size.applyAsDouble(found.force());
        for (int at = 0; at < samples.size(); at++) {
            if (size.applyAsDouble(samples.get(at).force()) >= near && isCrest(at, size)) {
                found = larger(found, narrowed(at, size), size);
            }
        }
        peaks.add(found);
        return found;
    }

    private boolean isCrest(int at, ToDoubleFunction<CutForce> size) {
        double here = size.applyAsDouble(samples.get(at).force());
        return here >= size.applyAsDouble(around(at - 1).force())
                && here >= size.applyAsDouble(around(at + 1).force());
    }

    /** The golden section between the neighbours of a sample. */
    private TurnPoint narrowed(int at, ToDoubleFunction<CutForce> size) {
        double angle = samples.get(at).angle();
        double low = angle - gap(at - 1, at);
        double high = angle + gap(at, at + 1);
        TurnPoint left = point(high - GOLDEN * (high - low));
        TurnPoint right = point(low + GOLDEN * (high - low));
        TurnPoint found = larger(larger(samples.get(at), left, size), right, size);
        for (int i = 1; i < NARROWINGS; i++) {
            if (size.applyAsDouble(left.force()) > size.applyAsDouble(right.force())) {
                high = low + GOLDEN * (high - low);
                right = left;
                left = point(high - GOLDEN * (high - low));
                found = larger(found, left, size);
            } else {
                low = high - GOLDEN * (high - low);
                left = right;
                right = point(low + GOLDEN * (high - low));
                found = larger(found, right, size);
            }
        }
        return found;
    }

    /** The second if it is larger by more than rounding, so that the same peak is found on every side of a turn. */
    private static TurnPoint larger(TurnPoint first, TurnPoint second, ToDoubleFunction<CutForce> size) {
        double known = size.applyAsDouble(first.force());
        return size.applyAsDouble(second.force()) > known + 1e-12 * Math.abs(known) ? second : first;
    }

    /** From one sample to the next, around the turn, rad. */
    private double gap(int from, int to) {
        return turnedBack(around(to).angle() - around(from).angle());
    }

    private TurnPoint around(int at) {
        return samples.get(Math.floorMod(at, samples.size()));
    }

    private TurnPoint point(double angle) {
        return new TurnPoint(turnedBack(angle), force.apply(angle));
    }

    private double turnedBack(double angle) {
        return angle - period * Math.floor(angle / period);
    }
}
