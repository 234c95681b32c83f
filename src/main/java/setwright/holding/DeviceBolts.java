package setwright.holding;

import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/** What presses a vise or another device onto the table: its own two bolts. Kernels in N. */
public final class DeviceBolts {
    /** The bolts of a usual device: one at each side. */
    public static final int COUNT = 2;

    /** What one bolt in a T-slot presses with when it is done up with a usual spanner, N. */
    private static final double EACH = 15000;

    /** A machined base on the table, dry to slightly oily. */
    public static final Friction ON_TABLE =
            new Friction(0.15, 0.10, Source.of("common practice: cast iron on the table, not quite free of oil"));

    /** The rule for bolts whose own figures nobody knows. */
    public static final Table USUAL = new Table(
            "press of the bolts of a device",
            "two bolts of 12 or 1/2 in, 15 kN each with a usual spanner; pessimistic 0.8 of it",
            Unit.KN,
            Source.of("common practice"));

    private DeviceBolts() {}

    /** All bolts together, N. */
    public static double press(int bolts, Outlook outlook) {
        return bolts * EACH * GripAsked.share(outlook);
    }
}
