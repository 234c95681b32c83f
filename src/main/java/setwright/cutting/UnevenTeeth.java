package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.Arrays;
import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * How far the teeth of one cutter stand out, tooth by tooth, each followed by the tooth that cut before it. A tooth takes
 * its own feed and what the one before it left; where that one left so much that it cuts nothing, the one before that
 * decides: h = max(0, min over k of (k fz sin φ + r - r of the k-th before)), k from 1 to z.
 *
 * <p>Validity: the offset is small beside the radius, so that it does not move the angles between which a tooth cuts.
 */
public final class UnevenTeeth {
    private static final Source ENVELOPE = Source.of("computed: a tooth cuts what all before it left standing");

    /** The largest chip of two teeth, of which one stands out more. */
    public static final Formula LARGEST_OF_TWO = new Formula(
            "h = min(2 fz, fz + 2 e)",
            symbol("h", "largest chip with run-out", Unit.MM, 0.0001, 4),
            List.of(
                    symbol("fz", "feed per tooth", Unit.MM_PER_TOOTH, 0.001, 2),
                    symbol("e", "offset of the axis", Unit.MM, 0, 0.2)),
            a -> runningOut(2, a[1], 0).largest(a[0]),
            ENVELOPE);

    public static final Procedure LARGEST = new Procedure(
            "largest chip with run-out",
            List.of(
                    "offset of the axis: half the total run-out",
                    "chip of a tooth: the least of k feeds and what it stands out over the k-th tooth before it",
                    "where the cutter stands out is tried round the turn, the largest chip counts"),
            Unit.MM,
            ENVELOPE);

    /** So many places between two teeth are tried for where the cutter stands out most. */
    private static final int TURNS = 12;

    private final double[] out;

    private UnevenTeeth(double[] out) {
        this.out = out;
    }

    /**
     * Teeth that turn about an axis beside their own.
     *
     * @param offset e between the axes, half the total indicated run-out, mm
     * @param towards angle from the first tooth to where the cutter stands out most, rad
     */
    public static UnevenTeeth runningOut(int teeth, double offset, double towards) {
        double[] out = new double[teeth];
        for (int k = 0; k < teeth; k++) {
            out[k] = offset * StrictMath.cos(2 * Math.PI * k / teeth - towards);
        }
        return new UnevenTeeth(out);
    }

    /** Teeth that turn about an axis beside their own, turned so that one takes the largest chip; it is the first. */
    public static UnevenTeeth worstRunningOut(int teeth, double offset, double feedPerTooth) {
        UnevenTeeth worst = runningOut(teeth, offset, 0);
        double largest = 0;
        for (int i = 0; i < TURNS * teeth; i++) {
            UnevenTeeth turned = runningOut(teeth, offset, 2 * Math.PI * i / (TURNS * teeth));
            if (turned.chip(0, feedPerTooth) > largest + 1e-12) {
                largest = turned.chip(0, feedPerTooth);
                worst = turned;
            }
        }
        return worst;
    }

    /**
     * The teeth of a roughing end mill at one height: waves along each edge, set off from tooth to tooth by an even share
     * of the wave.
     *
     * @param depth from crest to trough, mm
     * @param phase of the first tooth at this height, in waves
     */
    public static UnevenTeeth waved(int teeth, double depth, double phase) {
        double[] out = new double[teeth];
        for (int k = 0; k < teeth; k++) {
            out[k] = depth / 2 * StrictMath.cos(2 * Math.PI * (phase + (double) k / teeth));
        }
        return new UnevenTeeth(out);
    }

    /** These teeth with those of another cause added. */
    public UnevenTeeth and(UnevenTeeth other) {
        double[] sum = new double[out.length];
        for (int k = 0; k < out.length; k++) {
            sum[k] = out[k] + other.out[k];
        }
        return new UnevenTeeth(sum);
    }

    /** The same teeth as a slanted edge feels them, square to itself. */
    public UnevenTeeth times(double factor) {
        return new UnevenTeeth(Arrays.stream(out).map(one -> one * factor).toArray());
    }

    public int teeth() {
        return out.length;
    }

    /** Whether one stands out as far as the other. */
    public boolean even() {
        return Arrays.stream(out).allMatch(one -> Math.abs(one - out[0]) < 1e-12);
    }

    /** The chip of a tooth where even teeth would take the given one, mm. */
    public double chip(int tooth, double even) {
        double least = out.length * even;
        for (int k = 1; k < out.length; k++) {
            least = Math.min(least, k * even + out[tooth] - out[(tooth + k) % out.length]);
        }
        return Math.max(0, least);
    }

    /** The largest chip of any tooth where even teeth would take the given one, mm. */
    public double largest(double even) {
        double largest = 0;
        for (int tooth = 0; tooth < out.length; tooth++) {
            largest = Math.max(largest, chip(tooth, even));
        }
        return largest;
    }
}
