package setwright.rigidity.stability;

/**
 * The size of the largest eigenvalue of a small matrix, from the growth of its powers: |H^n|^(1/n) with n doubled until it
 * says no more. Never fails to converge, which a search for each single eigenvalue may.
 */
final class SpectralRadius {
    private static final int DOUBLINGS = 20;

    private SpectralRadius() {}

    /** Of the first {@code size} rows and columns. */
    static double of(double[][] matrix, int size) {
        double[] power = new double[size * size];
        for (int i = 0; i < size; i++) {
            System.arraycopy(matrix[i], 0, power, size * i, size);
        }
        double[] square = new double[size * size];
        double logarithm = 0;
        double share = 1;
        for (int i = 0; i <= DOUBLINGS; i++) {
            double norm = norm(power);
            if (norm == 0) {
                return 0;
            }
            logarithm += share * StrictMath.log(norm);
            divide(power, norm);
            square(power, square, size);
            double[] swapped = power;
            power = square;
            square = swapped;
            share /= 2;
        }
        return StrictMath.exp(logarithm);
    }

    private static void square(double[] of, double[] into, int size) {
        java.util.Arrays.fill(into, 0);
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < size; k++) {
                double factor = of[size * i + k];
                for (int j = 0; j < size; j++) {
                    into[size * i + j] += factor * of[size * k + j];
                }
            }
        }
    }

    private static double norm(double[] entries) {
        double sum = 0;
        for (double entry : entries) {
            sum += entry * entry;
        }
        return Math.sqrt(sum);
    }

    private static void divide(double[] entries, double by) {
        for (int i = 0; i < entries.length; i++) {
            entries[i] /= by;
        }
    }
}
