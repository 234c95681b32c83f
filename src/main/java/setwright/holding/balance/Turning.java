package setwright.holding.balance;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Of all motions that prove the same factor (a straight pull on equal jaws may start a slide, or a turn about any corner),
 * the one that turns least about the three axes together: the dual of a programme in which forces that act may grow and
 * shrink, and a unit of moment about each axis resists in their place.
 */
final class Turning implements Columns {
    private static final double ACTS = 1e-9;
    private static final int AXES = 3;

    private final Cones cones;
    private final int[] acting;
    private final double[] right;

    private Turning(Cones cones, double[] weights) {
        this.cones = cones;
        int[] found = new int[weights.length];
        int count = 0;
        for (int id = 0; id < weights.length; id++) {
            if (weights[id] > ACTS) {
                found[count++] = id;
            }
        }
        acting = Arrays.copyOf(found, count);
        right = new double[cones.rows() + AXES];
        Arrays.fill(right, cones.rows(), right.length, 1);
    }

    /** The same solution with the motion that turns least, or as it was where that is not proved. */
    static Solution least(Cones cones, double[] load, Solution solution) {
        double[] driving = solution.proves() == Solution.Proves.NOTHING ? negative(cones.right()) : load;
        Turning turning = new Turning(cones, solution.weights());
        return Simplex.standing(turning)
                .flatMap(solver -> solver.push(Arrays.copyOf(driving, driving.length + AXES), 1e9))
                .map(gentle -> solution.by(Arrays.copyOf(gentle.dual(), cones.rows())))
                .filter(gentle -> Certificate.of(cones, load, gentle).isGood())
                .orElse(solution);
    }

    private static double[] negative(double[] numbers) {
        double[] negative = numbers.clone();
        for (int i = 0; i < negative.length; i++) {
            negative[i] = -negative[i];
        }
        return negative;
    }

    @Override
    public int rows() {
        return right.length;
    }

    @Override
    public int columns() {
        return cones.columns() + acting.length + 2 * AXES;
    }

    @Override
    public double[] right() {
        return right;
    }

    @Override
    public double[] column(int id) {
        int beyond = id - cones.columns();
        if (beyond < 0) {
            return Arrays.copyOf(cones.column(id), rows());
        }
        if (beyond < acting.length) {
            return Arrays.copyOf(negative(cones.column(acting[beyond])), rows());
        }
        int moment = beyond - acting.length;
        double[] column = new double[rows()];
        column[3 + moment / 2] = moment % 2 == 0 ? 1 : -1;
        column[cones.rows() + moment / 2] = 1;
        return column;
    }

    @Override
    public double[] products(double[] row, double @Nullable [] into) {
        double[] products = into == null ? new double[columns()] : into;
        cones.products(Arrays.copyOf(row, cones.rows()), products);
        int id = cones.columns();
        for (int acts : acting) {
            products[id++] = -products[acts];
        }
        for (int axis = 0; axis < AXES; axis++) {
            products[id++] = row[cones.rows() + axis] + row[3 + axis];
            products[id++] = row[cones.rows() + axis] - row[3 + axis];
        }
        return products;
    }
}
