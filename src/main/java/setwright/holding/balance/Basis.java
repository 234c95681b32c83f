package setwright.holding.balance;

/**
 * A basis of the revised simplex method with its explicit inverse, small enough to be updated row by row. Ties of the
 * ratio test are broken lexicographically: the rows of {@code ties} stand for a right side that was moved by ever smaller
 * amounts, so that no basis comes back however degenerate the balance is (it always is: equal corners, no side load).
 */
final class Basis {
    /** Stands for the load in a basis. */
    static final int LOAD = -1;

    private static final double PIVOT = 1e-9;
    private static final double SURE = 1e-3;
    private static final double TIE = 1e-11;

    private final int[] columns;
    private final double[][] inverse;
    private final double[][] ties;
    private final double[] point;

    private Basis(int[] columns, double[][] inverse, double[] point) {
        this.columns = columns;
        this.inverse = inverse;
        this.point = point;
        ties = identity(columns.length);
    }

    /** One artificial column a row, with the sign of the right side. */
    static Basis artificial(double[] right) {
        int[] columns = new int[right.length];
        double[][] inverse = new double[right.length][right.length];
        double[] point = new double[right.length];
        for (int i = 0; i < right.length; i++) {
            columns[i] = -2 - i;
            inverse[i][i] = right[i] < 0 ? -1 : 1;
            point[i] = Math.abs(right[i]);
        }
        return new Basis(columns, inverse, point);
    }

    /** A basis in which the load's column is there for the first time; the order of ties starts anew. */
    Basis copy() {
        double[][] copied = new double[inverse.length][];
        for (int i = 0; i < inverse.length; i++) {
            copied[i] = inverse[i].clone();
        }
        return new Basis(columns.clone(), copied, point.clone());
    }

    /** The same basis with inverse and point worked out from the columns anew. */
    Basis refreshed(Columns programme, double[] load) {
        double[][] inverted = inverted(programme, load);
        double[] fresh = new double[size()];
        for (int i = 0; i < fresh.length; i++) {
            fresh[i] = Cones.dot(inverted[i], programme.right());
        }
        return new Basis(columns, inverted, fresh);
    }

    /** Gauss-Jordan with the largest pivot of each column. */
    private double[][] inverted(Columns programme, double[] load) {
        double[][] matrix = matrix(programme, load);
        double[][] inverted = identity(size());
        for (int column = 0; column < size(); column++) {
            int pivot = column;
            for (int i = column + 1; i < size(); i++) {
                pivot = Math.abs(matrix[i][column]) > Math.abs(matrix[pivot][column]) ? i : pivot;
            }
            exchange(matrix, column, pivot);
            exchange(inverted, column, pivot);
            scale(inverted[column], matrix[column][column]);
            scale(matrix[column], matrix[column][column]);
            for (int i = 0; i < size(); i++) {
                if (i != column && matrix[i][column] != 0) {
                    subtract(inverted[i], matrix[i][column], inverted[column]);
                    subtract(matrix[i], matrix[i][column], matrix[column]);
                }
            }
        }
        return inverted;
    }

    private double[][] matrix(Columns programme, double[] load) {
        double[][] matrix = new double[size()][size()];
        for (int j = 0; j < size(); j++) {
            double[] column = columns[j] >= 0 ? programme.column(columns[j]) : load;
            for (int i = 0; i < size(); i++) {
                matrix[i][j] = artificial(j) ? (i == -2 - columns[j] ? 1 : 0) : column[i];
            }
        }
        return matrix;
    }

    private static void exchange(double[][] rows, int a, int b) {
        double[] row = rows[a];
        rows[a] = rows[b];
        rows[b] = row;
    }

    private static double[][] identity(int size) {
        double[][] matrix = new double[size][size];
        for (int i = 0; i < size; i++) {
            matrix[i][i] = 1;
        }
        return matrix;
    }

    int size() {
        return columns.length;
    }

    int column(int row) {
        return columns[row];
    }

    /** Where a column stands, -1 where it is not in the basis. */
    int rowOf(int column) {
        for (int i = 0; i < columns.length; i++) {
            if (columns[i] == column) {
                return i;
            }
        }
        return -1;
    }

    /** Whether another load in place of the load of this basis leaves no weight below nothing. */
    boolean alsoBalances(double[] load) {
        double[] change = through(load);
        int loadRow = rowOf(LOAD);
        if (change[loadRow] < SURE) {
            return false;
        }
        double push = point[loadRow] / change[loadRow];
        for (int i = 0; i < change.length; i++) {
            boolean below = point[i] - change[i] * push < (artificial(i) ? -PIVOT : 0);
            if (i != loadRow && (below || artificial(i) && Math.abs(change[i]) > PIVOT)) {
                return false;
            }
        }
        return true;
    }

    /** This basis with another load in place of its own. */
    Basis with(double[] load) {
        Basis copy = copy();
        copy.swap(rowOf(LOAD), LOAD, copy.through(load));
        return copy;
    }

    boolean artificial(int row) {
        return columns[row] < LOAD;
    }

    double point(int row) {
        return point[row];
    }

    /** Row of the inverse; not to be written to. */
    double[] row(int row) {
        return inverse[row];
    }

    /** How the point changes, with the sign turned, for each unit of a column that comes in. */
    double[] through(double[] column) {
        double[] change = new double[size()];
        for (int i = 0; i < change.length; i++) {
            change[i] = Cones.dot(inverse[i], column);
        }
        return change;
    }

    /** The row that first comes to nothing as a column comes in, -1 where none ever does. */
    int leaving(double[] change) {
        int best = -1;
        for (int i = 0; i < change.length; i++) {
            if (change[i] > PIVOT && (best < 0 || sooner(i, best, change))) {
                best = i;
            }
        }
        return best;
    }

    private boolean sooner(int row, int best, double[] change) {
        double lead = point[row] / change[row] - point[best] / change[best];
        for (int j = 0; Math.abs(lead) <= TIE && j < change.length; j++) {
            lead = ties[row][j] / change[row] - ties[best][j] / change[best];
        }
        return lead < 0;
    }

    /** Takes a column in at a row. */
    void swap(int row, int column, double[] change) {
        double pivot = change[row];
        columns[row] = column;
        point[row] /= pivot;
        scale(inverse[row], pivot);
        scale(ties[row], pivot);
        for (int i = 0; i < change.length; i++) {
            if (i != row && change[i] != 0) {
                point[i] = settled(point[i] - change[i] * point[row]);
                subtract(inverse[i], change[i], inverse[row]);
                subtract(ties[i], change[i], ties[row]);
            }
        }
    }

    /** Nothing is nothing: a rounding error must not look like the least ratio. */
    private static double settled(double number) {
        return Math.abs(number) < 1e-13 ? 0 : number;
    }

    /** Takes a row's artificial column to exactly nothing. */
    void settle(int row) {
        point[row] = 0;
    }

    private static void scale(double[] row, double pivot) {
        for (int j = 0; j < row.length; j++) {
            row[j] /= pivot;
        }
    }

    private static void subtract(double[] row, double factor, double[] other) {
        for (int j = 0; j < row.length; j++) {
            row[j] -= factor * other[j];
        }
    }
}
