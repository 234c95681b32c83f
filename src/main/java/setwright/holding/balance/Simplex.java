package setwright.holding.balance;

import java.util.Optional;

/**
 * Solves our small programmes: the largest push of a load that the columns balance, by the revised simplex method with
 * lexicographic ties. The right side is balanced once; each load starts from that basis.
 */
final class Simplex {
    private static final double WORTH = 1e-10;
    private static final double SHORT = 1e-9;
    private static final double GONE = 1e-9;
    private static final int PIVOTS_A_ROW = 100;

    private final Columns programme;
    private final Basis standing;
    private final boolean stands;

    private Simplex(Columns programme, Basis standing, boolean stands) {
        this.programme = programme;
        this.standing = standing;
        this.stands = stands;
    }

    /** Balances the right side without a load; empty where the pivots do not come to an end. */
    static Optional<Simplex> standing(Columns programme) {
        Basis basis = Basis.artificial(programme.right());
        double[] products = new double[programme.columns()];
        for (int pivot = 0; pivot < PIVOTS_A_ROW * programme.rows(); pivot++) {
            int id = greatest(programme.products(artificialRows(basis), products));
            if (products[id] < WORTH) {
                boolean stands = missing(basis) < SHORT;
                if (stands) {
                    driveOut(programme, basis);
                }
                return Optional.of(new Simplex(programme, basis, stands));
            }
            double[] change = basis.through(programme.column(id));
            int row = basis.leaving(change);
            if (row < 0) {
                return Optional.empty();
            }
            basis.swap(row, id, change);
        }
        return Optional.empty();
    }

    private static double[] artificialRows(Basis basis) {
        double[] sum = new double[basis.size()];
        for (int i = 0; i < sum.length; i++) {
            if (basis.artificial(i)) {
                for (int j = 0; j < sum.length; j++) {
                    sum[j] += basis.row(i)[j];
                }
            }
        }
        return sum;
    }

    private static double missing(Basis basis) {
        double sum = 0;
        for (int i = 0; i < basis.size(); i++) {
            sum += basis.artificial(i) ? basis.point(i) : 0;
        }
        return sum;
    }

    /** Artificial columns that are left in the basis at nothing give way to real ones; where none can, no contact acts. */
    private static void driveOut(Columns programme, Basis basis) {
        for (int row = 0; row < basis.size(); row++) {
            if (basis.artificial(row)) {
                basis.settle(row);
                double[] products = programme.products(basis.row(row), null);
                int id = strongest(products);
                if (Math.abs(products[id]) > GONE) {
                    basis.swap(row, id, basis.through(programme.column(id)));
                }
            }
        }
    }

    boolean stands() {
        return stands;
    }

    /** Why nothing is balanced; only where it does not stand. */
    Solution nothing() {
        double[] dual = artificialRows(standing);
        for (int i = 0; i < dual.length; i++) {
            dual[i] = -dual[i];
        }
        return new Solution(Solution.Proves.NOTHING, new double[programme.columns()], 0, dual);
    }

    /**
     * The largest push of a load, or a proof that it is at least {@code enough}; empty where the pivots do not come to
     * an end.
     *
     * @param load a column of length one
     * @param trail of the loads pushed before
     */
    Optional<Solution> push(double[] load, double enough, Trail trail) {
        Optional<Basis> near = trail.start(load);
        if (near.isPresent()) {
            return climb(near.get(), load, enough, trail);
        }
        Basis basis = standing.copy();
        double[] change = basis.through(load);
        int unresisted = unresisted(basis, change);
        int loadRow = unresisted < 0 ? basis.leaving(change) : unresisted;
        if (loadRow < 0) {
            return Optional.of(ray(basis, change, Basis.LOAD, enough));
        }
        basis.swap(loadRow, Basis.LOAD, change);
        return unresisted < 0
                ? climb(basis, load, enough, trail)
                : Optional.of(solution(Solution.Proves.EXACTLY, basis.refreshed(programme, load)));
    }

    Optional<Solution> push(double[] load, double enough) {
        return push(load, enough, new Trail());
    }

    private Optional<Solution> climb(Basis basis, double[] load, double enough, Trail trail) {
        int loadRow = basis.rowOf(Basis.LOAD);
        double[] products = new double[programme.columns()];
        for (int pivot = 0; pivot < PIVOTS_A_ROW * programme.rows(); pivot++) {
            if (basis.point(loadRow) >= enough) {
                return Optional.of(ended(Solution.Proves.AT_LEAST, basis, load, trail));
            }
            double[] dual = basis.row(loadRow);
            int id = least(programme.products(dual, products));
            if (products[id] > -WORTH * size(dual)) {
                return Optional.of(ended(Solution.Proves.EXACTLY, basis, load, trail));
            }
            double[] change = basis.through(programme.column(id));
            int row = basis.leaving(change);
            if (row < 0) {
                return Optional.of(ray(basis, change, id, enough));
            }
            basis.swap(row, id, change);
        }
        return Optional.empty();
    }

    private Solution ended(Solution.Proves proves, Basis basis, double[] load, Trail trail) {
        Basis fresh = basis.refreshed(programme, load);
        trail.add(fresh);
        return solution(proves, fresh);
    }

    /** A row that no contact acts on, but the load does: nothing resists it. */
    private static int unresisted(Basis basis, double[] change) {
        for (int i = 0; i < change.length; i++) {
            if (basis.artificial(i) && Math.abs(change[i]) > GONE) {
                return i;
            }
        }
        return -1;
    }

    private Solution solution(Solution.Proves proves, Basis basis) {
        int loadRow = basis.rowOf(Basis.LOAD);
        return new Solution(proves, weights(basis), basis.point(loadRow), basis.row(loadRow));
    }

    /** A column that may grow for ever: it grows until the push is enough. */
    private Solution ray(Basis basis, double[] change, int entering, double enough) {
        int loadRow = basis.rowOf(Basis.LOAD);
        double step = loadRow < 0 ? enough : (basis.point(loadRow) - enough) / change[loadRow];
        double[] weights = weights(basis);
        for (int i = 0; i < basis.size(); i++) {
            if (basis.column(i) >= 0) {
                weights[basis.column(i)] -= step * change[i];
            }
        }
        if (entering >= 0) {
            weights[entering] += step;
        }
        return new Solution(Solution.Proves.AT_LEAST, weights, enough, new double[basis.size()]);
    }

    private double[] weights(Basis basis) {
        double[] weights = new double[programme.columns()];
        for (int i = 0; i < basis.size(); i++) {
            if (basis.column(i) >= 0) {
                weights[basis.column(i)] += basis.point(i);
            }
        }
        return weights;
    }

    private static double size(double[] row) {
        double size = 0;
        for (double number : row) {
            size = Math.max(size, Math.abs(number));
        }
        return size;
    }

    private static int greatest(double[] numbers) {
        int best = 0;
        for (int i = 1; i < numbers.length; i++) {
            best = numbers[i] > numbers[best] ? i : best;
        }
        return best;
    }

    private static int least(double[] numbers) {
        int best = 0;
        for (int i = 1; i < numbers.length; i++) {
            best = numbers[i] < numbers[best] ? i : best;
        }
        return best;
    }

    private static int strongest(double[] numbers) {
        int best = 0;
        for (int i = 1; i < numbers.length; i++) {
            best = Math.abs(numbers[i]) > Math.abs(numbers[best]) ? i : best;
        }
        return best;
    }
}
