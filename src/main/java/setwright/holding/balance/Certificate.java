package setwright.holding.balance;

/**
 * What proves an answer, worked out from the original columns and not from the solver's own bookkeeping.
 *
 * @param residual the force or moment left over, or the pull of a contact, as a share of all that presses
 * @param sign the least power that the motion gives to any edge of any cone; below nothing it proves nothing
 * @param gap between the factor reached and the bound that the motion gives, as a share of the factor where that is
 *     above one
 */
public record Certificate(double residual, double sign, double gap) {
    private static final double RESIDUAL = 1e-7;
    private static final double SIGN = -1e-7;
    private static final double GAP = 1e-6;

    public boolean isGood() {
        return residual < RESIDUAL && sign > SIGN && gap < GAP;
    }

    /** The worse of each figure, for an answer that rests on several proofs. */
    Certificate with(Certificate other) {
        return new Certificate(
                Math.max(residual, other.residual), Math.min(sign, other.sign), Math.max(gap, other.gap));
    }

    /** Checks a solution for a load column of length one. */
    static Certificate of(Cones cones, double[] load, Solution solution) {
        return switch (solution.proves()) {
            case EXACTLY ->
                new Certificate(residual(cones, load, solution), sign(cones, solution), gap(cones, load, solution));
            case AT_LEAST -> new Certificate(residual(cones, load, solution), 0, 0);
            case NOTHING -> new Certificate(0, sign(cones, solution), shortage(cones, solution));
        };
    }

    private static double residual(Cones cones, double[] load, Solution solution) {
        double[] sums = new double[cones.rows()];
        double size = Math.max(1, solution.push());
        double pull = Math.max(0, -solution.push());
        add(sums, load, solution.push());
        add(sums, cones.right(), -1);
        double[] weights = solution.weights();
        for (int id = 0; id < weights.length; id++) {
            if (weights[id] != 0) {
                add(sums, cones.column(id), weights[id]);
                size = Math.max(size, weights[id]);
                pull = Math.max(pull, -weights[id]);
            }
        }
        return Math.max(largest(sums), pull) / size;
    }

    private static double sign(Cones cones, Solution solution) {
        double least = Double.POSITIVE_INFINITY;
        for (double product : cones.products(solution.dual(), null)) {
            least = Math.min(least, product);
        }
        return least / largest(solution.dual());
    }

    /** The motion has to give the load power one, and then bounds the push from above. */
    private static double gap(Cones cones, double[] load, Solution solution) {
        double bound = Cones.dot(solution.dual(), cones.right());
        double unmatched = Math.abs(Cones.dot(solution.dual(), load) - 1);
        return Math.max(unmatched, Math.abs(bound - solution.push()) / Math.max(1, solution.push()));
    }

    /** The motion has to gain power although no contact gives it any: then nothing can balance it. */
    private static double shortage(Cones cones, Solution solution) {
        double gain = -Cones.dot(solution.dual(), cones.right()) / largest(solution.dual());
        return gain > 1e-10 ? 0 : 1;
    }

    private static void add(double[] sums, double[] column, double weight) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += weight * column[i];
        }
    }

    private static double largest(double[] numbers) {
        double largest = Double.MIN_NORMAL;
        for (double number : numbers) {
            largest = Math.max(largest, Math.abs(number));
        }
        return largest;
    }
}
