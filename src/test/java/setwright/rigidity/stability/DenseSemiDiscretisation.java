package setwright.rigidity.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.ojalgo.matrix.decomposition.Eigenvalue;
import org.ojalgo.matrix.store.RawStore;
import org.ojalgo.scalar.ComplexNumber;

/**
 * The reference: Insperger and Stepan's semi-discretisation with its whole transition matrix. The force factor is a mean
 * over each interval, the delayed place the mean of its two ends, each interval a matrix exponential.
 */
record DenseSemiDiscretisation(ToothCut cut, Mode x, Mode y, double speed, int intervals) {
    private static final int SAMPLES = 40;

    /** As many intervals as a short arc of cut and every wave between teeth need. */
    static DenseSemiDiscretisation of(ToothCut cut, Mode x, Mode y, double speed) {
        double waves = Math.max(x.frequency(), y.frequency()) * cut.period(speed) / (2 * Math.PI);
        return new DenseSemiDiscretisation(cut, x, y, speed, (int) Math.ceil(80 + 30 * waves));
    }

    double growth(double depth) {
        Eigenvalue<Double> values = Eigenvalue.R064.make(4 + 2 * intervals, false);
        values.decompose(RawStore.wrap(transition(depth)));
        double largest = 0;
        for (ComplexNumber value : values.getEigenvalues()) {
            largest = Math.max(largest, value.norm());
        }
        return largest;
    }

    /** Rows: place and speed now, then the places of every interval back, each a line of the matrix so far. */
    private double[][] transition(double depth) {
        int size = 4 + 2 * intervals;
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            double[] row = new double[size];
            row[i] = 1;
            rows.add(row);
        }
        for (int i = 0; i < intervals; i++) {
            step(rows, exponential(depth, i));
        }
        return rows.toArray(double[][]::new);
    }

    private void step(List<double[]> rows, RealMatrix exponential) {
        int size = rows.size();
        List<double[]> next = new ArrayList<>();
        double[][] delayed = new double[2][size];
        for (int j = 0; j < size; j++) {
            for (int axis = 0; axis < 2; axis++) {
                double newer = intervals == 1 ? rows.get(axis)[j] : rows.get(size - 4 + axis)[j];
                delayed[axis][j] = (rows.get(size - 2 + axis)[j] + newer) / 2;
            }
        }
        for (int i = 0; i < 4; i++) {
            double[] row = new double[size];
            for (int j = 0; j < size; j++) {
                for (int k = 0; k < 4; k++) {
                    row[j] += exponential.getEntry(i, k) * rows.get(k)[j];
                }
                row[j] += exponential.getEntry(i, 4) * delayed[0][j] + exponential.getEntry(i, 5) * delayed[1][j];
            }
            next.add(row);
        }
        next.add(rows.get(0));
        next.add(rows.get(1));
        next.addAll(new ArrayList<>(rows.subList(4, size - 2)));
        rows.clear();
        rows.addAll(next);
    }

    private RealMatrix exponential(double depth, int interval) {
        double[] h = mean(depth, interval);
        double wx = x.frequency() * x.frequency();
        double wy = y.frequency() * y.frequency();
        double[] pull = {
            wx * h[0] / x.stiffness(), wx * h[1] / x.stiffness(), wy * h[2] / y.stiffness(), wy * h[3] / y.stiffness()
        };
        double scale = x.frequency();
        double[][] rates = {
            {0, 0, scale, 0, 0, 0},
            {0, 0, 0, scale, 0, 0},
            {
                -(wx + pull[0]) / scale,
                -pull[1] / scale,
                -2 * x.damping() * x.frequency(),
                0,
                pull[0] / scale,
                pull[1] / scale
            },
            {
                -pull[2] / scale,
                -(wy + pull[3]) / scale,
                0,
                -2 * y.damping() * y.frequency(),
                pull[2] / scale,
                pull[3] / scale
            },
            new double[6],
            new double[6]
        };
        double length = cut.period(speed) / intervals;
        return MatrixUtils.matrixExponential(new Array2DRowRealMatrix(rates, false).scalarMultiply(length));
    }

    private double[] mean(double depth, int interval) {
        double[] sum = new double[4];
        for (int i = 0; i < SAMPLES; i++) {
            double[] at = force(depth, cut.pitch() * (interval + (i + 0.5) / SAMPLES) / intervals);
            Arrays.setAll(sum, j -> sum[j] + at[j] / SAMPLES);
        }
        return sum;
    }

    private double[] force(double depth, double angle) {
        double[] sum = new double[4];
        for (int tooth = 0; tooth < cut.teeth(); tooth++) {
            double at = angle + tooth * cut.pitch();
            if (at >= cut.arc().start() && at <= cut.arc().exit()) {
                double tangential = depth * cut.specific();
                double radial = tangential * cut.radialRatio();
                sum[0] += (tangential * Math.cos(at) + radial * Math.sin(at)) * Math.sin(at);
                sum[1] += (tangential * Math.cos(at) + radial * Math.sin(at)) * Math.cos(at);
                sum[2] += (-tangential * Math.sin(at) + radial * Math.cos(at)) * Math.sin(at);
                sum[3] += (-tangential * Math.sin(at) + radial * Math.cos(at)) * Math.cos(at);
            }
        }
        return sum;
    }
}
