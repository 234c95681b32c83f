package setwright.holding;

import setwright.holding.balance.Answer;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/** The lock of a rotary table or dividing head; torques in N·mm. */
public final class IndexLock {
    public static final Table FACTOR = new Table(
            "hold of the lock",
            "torque that the lock holds over the greatest torque of the cut about the axis; pessimistic 0.7 of the lock",
            Unit.NONE,
            Source.of("common practice; from memory: a lock that is done up by hand scatters by a third"));

    private static final double PESSIMISTIC_SHARE = 0.7;

    private IndexLock() {}

    /** How many times the turning the lock bears. */
    public static double factor(double lock, double turning, Outlook outlook) {
        double share = outlook == Outlook.EXPECTED ? 1 : PESSIMISTIC_SHARE;
        return Math.min(Answer.BEYOND, share * lock / Math.max(1e-9, turning));
    }
}
