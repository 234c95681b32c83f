package setwright.rigidity.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The border of stability by the mean of the directional factors: at every chatter frequency two depths, each with the
 * lag of one tooth's wave behind the last one's. The least depth of all that fit a speed is its border.
 *
 * <p>Good for two teeth or more in a wide cut. Not to be trusted below a tenth of the diameter, where single teeth hit
 * and the border has lobes of its own between these (see {@link DelayedMap}); it knows nothing of the damping that a worn
 * or slow edge brings.
 */
public final class ZeroOrder {
    public static final Procedure DEPTH = new Procedure(
            "largest stable depth",
            List.of(
                    "mean directional factors over the arc of cut",
                    "at each frequency w the two roots Λ of a0 Λ² + a1 Λ + 1 = 0, followed from one to the next",
                    "a = -2 π Re Λ (1 + (Im Λ / Re Λ)²) / (N Kt), where above 0",
                    "speeds that fit: w T = π - 2 atan(Im Λ / Re Λ) + 2 k π",
                    "the least of all depths at that speed"),
            Unit.MM,
            Source.of("from memory: Altintas & Budak 1995, zero-order solution; as in a published implementation"));

    /** Below this share of the diameter the mean of the factors misleads. */
    public static final double LEAST_IMMERSION = 0.1;

    private static final double TURN = 2 * Math.PI;

    private final ToothCut cut;
    private final double[] frequencies;
    private final double[][] depths;
    private final double[][] lags;

    private ZeroOrder(ToothCut cut, double[] frequencies) {
        this.cut = cut;
        this.frequencies = frequencies;
        depths = new double[2][frequencies.length];
        lags = new double[2][frequencies.length];
    }

    /** A speed in rad/s and the depth up to which it is quiet, mm; infinite where no wave fits. */
    public record Lobe(double speed, double depth) {}

    public static ZeroOrder of(ToothCut cut, Receptance x, Receptance y) {
        ZeroOrder border = new ZeroOrder(cut, Scan.of(x, y));
        border.walk(DirectionalFactors.of(cut.arc(), cut.radialRatio()), x, y);
        return border;
    }

    private void walk(DirectionalFactors factors, Receptance x, Receptance y) {
        EigenvaluePair roots = new EigenvaluePair();
        for (int i = 0; i < frequencies.length; i++) {
            double w = frequencies[i];
            roots.follow(factors, x.real(w), x.imaginary(w), y.real(w), y.imaginary(w));
            put(0, i, roots.real(0), roots.imaginary(0));
            put(1, i, roots.real(1), roots.imaginary(1));
        }
    }

    private void put(int branch, int i, double real, double imaginary) {
        double kappa = imaginary / real;
        double depth = -TURN * real * (1 + kappa * kappa) / (cut.teeth() * cut.specific());
        depths[branch][i] = depth > 0 && Double.isFinite(depth) ? depth : Double.NaN;
        lags[branch][i] = Math.PI - 2 * StrictMath.atan(kappa);
    }

    /** Up to which every speed is quiet, mm. */
    public double smallestDepth() {
        return Arrays.stream(depths)
                .flatMapToDouble(Arrays::stream)
                .filter(depth -> depth > 0)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The frequency of the chatter at the smallest depth, rad/s. */
    public double chatterFrequency() {
        double smallest = smallestDepth();
        for (int i = 0; i < frequencies.length; i++) {
            if (depths[0][i] == smallest || depths[1][i] == smallest) {
                return frequencies[i];
            }
        }
        return Double.NaN;
    }

    /** Up to which a spindle speed in rad/s is quiet, mm; infinite where no wave fits it. */
    public double depthAt(double speed) {
        double period = cut.period(speed);
        return Math.min(least(depths[0], lags[0], period), least(depths[1], lags[1], period));
    }

    private double least(double[] depth, double[] lag, double period) {
        double least = Double.POSITIVE_INFINITY;
        double before = waves(0, lag, period);
        for (int i = 1; i < depth.length; i++) {
            double here = waves(i, lag, period);
            double low = Math.min(before, here);
            double high = Math.max(before, here);
            for (double k = Math.max(0, Math.ceil(low)); k <= high; k++) {
                double share = here == before ? 0 : (k - before) / (here - before);
                double found = depth[i - 1] + share * (depth[i] - depth[i - 1]);
                least = found < least ? found : least;
            }
            before = here;
        }
        return least;
    }

    /** Whole waves between two teeth, where it is whole. */
    private double waves(int i, double[] lag, double period) {
        return (frequencies[i] * period - lag[i]) / TURN;
    }

    /** The lobe diagram: so many speeds, evenly spaced. */
    public List<Lobe> lobes(double from, double to, int count) {
        List<Lobe> lobes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double speed = from + (to - from) * i / Math.max(1, count - 1);
            lobes.add(new Lobe(speed, depthAt(speed)));
        }
        return List.copyOf(lobes);
    }
}
