package setwright.rigidity.stability;

import java.util.ArrayList;
import java.util.List;

/** The largest eigenvalue of a map that is only known by what it does (Arnoldi), its size alone. */
final class Krylov {
    private static final int BLOCK = 12;
    private static final int MOST = 240;
    private static final double SETTLED = 1e-5;
    private static final double NOTHING = 1e-12;

    private final DelayedMap map;
    private final int most;
    private final List<double[]> basis = new ArrayList<>();
    private final double[][] hessenberg;

    Krylov(DelayedMap map) {
        this.map = map;
        most = Math.min(MOST, map.size());
        hessenberg = new double[most + 1][most];
    }

    double largest() {
        basis.add(unit(map.start()));
        double before = Double.NaN;
        while (true) {
            boolean exhausted = grow();
            double found = SpectralRadius.of(hessenberg, basis.size() - 1);
            if (exhausted || Math.abs(found - before) <= SETTLED * found) {
                return found;
            }
            before = found;
        }
    }

    /** Adds a block of directions; true where there is none left to add. */
    private boolean grow() {
        for (int i = 0; i < BLOCK; i++) {
            int last = basis.size() - 1;
            double[] next = new double[map.size()];
            map.apply(basis.get(last), next);
            double size = norm(next);
            orthogonal(next, last);
            orthogonal(next, last);
            double left = norm(next);
            hessenberg[last + 1][last] = left;
            scale(next, 1 / Math.max(left, Double.MIN_NORMAL));
            basis.add(next);
            if (left <= NOTHING * size || basis.size() > most) {
                return true;
            }
        }
        return false;
    }

    private void orthogonal(double[] vector, int last) {
        for (int i = 0; i <= last; i++) {
            double[] direction = basis.get(i);
            double share = 0;
            for (int j = 0; j < vector.length; j++) {
                share += direction[j] * vector[j];
            }
            hessenberg[i][last] += share;
            for (int j = 0; j < vector.length; j++) {
                vector[j] -= share * direction[j];
            }
        }
    }

    private static double[] unit(double[] vector) {
        scale(vector, 1 / norm(vector));
        return vector;
    }

    private static double norm(double[] vector) {
        double sum = 0;
        for (double each : vector) {
            sum += each * each;
        }
        return Math.sqrt(sum);
    }

    private static void scale(double[] vector, double factor) {
        for (int i = 0; i < vector.length; i++) {
            vector[i] *= factor;
        }
    }
}
