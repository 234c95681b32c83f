package setwright.holding.balance;

import org.jspecify.annotations.Nullable;

/** A programme by its columns: weights of 0 or more have to make them, and the load that is pushed, add up to a right side. */
interface Columns {
    int rows();

    int columns();

    /** What the weighted columns and the load add up to; not to be written to. */
    double[] right();

    double[] column(int id);

    /** The products of a row vector with every column; the caller's array is filled if it brings one. */
    double[] products(double[] row, double @Nullable [] into);
}
