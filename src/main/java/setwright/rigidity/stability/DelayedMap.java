package setwright.rigidity.stability;

import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * How one tooth period of ringing leads to the next: the swing of the tip over the last period goes in, that over this
 * one comes out. It is carried through step by step (Runge-Kutta of fourth order between entry and exit of the teeth,
 * what the tooth before left interpolated by position and velocity) and never written as a matrix; the largest of its
 * eigenvalues says by how much the ringing grows from one tooth to the next.
 *
 * <p>Holds at every width of cut. Linear: teeth that leave the cut by their ringing are not followed.
 */
public final class DelayedMap {
    public static final Procedure GROWTH = new Procedure(
            "growth of ringing from tooth to tooth",
            List.of(
                    "one tooth period in steps, 40 or more to a wave, entry and exit of the teeth between two of them",
                    "x'' + 2 ζ w x' + w² x = -(w² / k) a h(t) (x - x of the tooth before)",
                    "the largest eigenvalue of the map from period to period, in a Krylov space",
                    "above 1 it grows"),
            Unit.NONE,
            Source.of("from memory: Insperger & Stepan, semi-discretisation; here without its matrix"));

    private static final double STEPS_PER_WAVE = 40;

    private final Mode x;
    private final Mode y;
    private final ToothSteps steps;
    private final double scale;

    /**
     * @param speed of the spindle, rad/s
     * @param depth mm
     */
    public DelayedMap(ToothCut cut, Mode x, Mode y, double speed, double depth) {
        this.x = x;
        this.y = y;
        scale = Math.max(x.frequency(), y.frequency());
        double stiffest = Math.min(x.stiffness(), y.stiffness());
        double quickened = Math.sqrt(1 + depth * cut.specific() * (1 + cut.radialRatio()) / stiffest);
        double waves = scale * cut.period(speed) / (2 * Math.PI) * quickened;
        steps = ToothSteps.of(cut, speed, depth, STEPS_PER_WAVE * waves);
    }

    /** By how much ringing grows from one tooth to the next; below 1 it dies out. */
    public double growth() {
        return new Krylov(this).largest();
    }

    /** How many numbers describe the swing over a period: place and speed in x and y at every step. */
    int size() {
        return 4 * (steps.count() + 1);
    }

    /** A swing to begin with: none in a direction that does not give. */
    double[] start() {
        double[] swing = new double[size()];
        for (int i = 0; i < swing.length; i += 4) {
            swing[i] = Double.isInfinite(x.stiffness()) ? 0 : 1 + 0.5 * StrictMath.sin(i);
            swing[i + 1] = Double.isInfinite(y.stiffness()) ? 0 : 1 - 0.5 * StrictMath.cos(i);
        }
        return swing;
    }

    /** The swing of the next period after this one. */
    void apply(double[] before, double[] after) {
        int last = 4 * steps.count();
        System.arraycopy(before, last, after, 0, 4);
        double[] slopes = new double[16];
        double[] probe = new double[4];
        for (int i = 0; i < steps.count(); i++) {
            step(i, before, after, slopes, probe);
        }
    }

    private void step(int i, double[] before, double[] after, double[] slopes, double[] probe) {
        double length = steps.length(i);
        int at = 4 * i;
        double scaled = length * scale / 8;
        double midX = (before[at] + before[at + 4]) / 2 + scaled * (before[at + 2] - before[at + 6]);
        double midY = (before[at + 1] + before[at + 5]) / 2 + scaled * (before[at + 3] - before[at + 7]);
        slope(steps.force(2 * i), after, at, before[at], before[at + 1], slopes, 0);
        advance(after, at, slopes, 0, length / 2, probe);
        slope(steps.force(2 * i + 1), probe, 0, midX, midY, slopes, 4);
        advance(after, at, slopes, 4, length / 2, probe);
        slope(steps.force(2 * i + 1), probe, 0, midX, midY, slopes, 8);
        advance(after, at, slopes, 8, length, probe);
        slope(steps.forceAtEnd(i), probe, 0, before[at + 4], before[at + 5], slopes, 12);
        for (int j = 0; j < 4; j++) {
            double mean = (slopes[j] + 2 * slopes[4 + j] + 2 * slopes[8 + j] + slopes[12 + j]) / 6;
            after[at + 4 + j] = after[at + j] + length * mean;
        }
    }

    private static void advance(double[] state, int at, double[] slopes, int from, double length, double[] to) {
        for (int j = 0; j < 4; j++) {
            to[j] = state[at + j] + length * slopes[from + j];
        }
    }

    /** Rates of a state; speeds are kept over the highest frequency, so that all four are of one size. */
    private void slope(DirectionalFactors h, double[] state, int at, double oldX, double oldY, double[] to, int into) {
        double dx = state[at] - oldX;
        double dy = state[at + 1] - oldY;
        to[into] = scale * state[at + 2];
        to[into + 1] = scale * state[at + 3];
        to[into + 2] = pull(x, state[at], state[at + 2], h.xx() * dx + h.xy() * dy);
        to[into + 3] = pull(y, state[at + 1], state[at + 3], h.yx() * dx + h.yy() * dy);
    }

    private double pull(Mode mode, double place, double speed, double force) {
        double w = mode.frequency();
        return -w * w * (place + force / mode.stiffness()) / scale - 2 * mode.damping() * w * speed;
    }
}
