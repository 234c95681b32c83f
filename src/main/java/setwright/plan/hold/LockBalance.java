package setwright.plan.hold;

import java.util.List;
import setwright.holding.HoldFactor;
import setwright.holding.IndexLock;
import setwright.holding.Outlook;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.quantity.Value;

/**
 * The lock of a dividing device against what the cut turns its spindle with.
 *
 * @param at a place on the axis, from the part's left front bottom corner
 * @param axis one long
 * @param lock torque that it holds, N·mm
 */
record LockBalance(String thing, Vector at, Vector axis, Value lock) implements JointBalance {
    @Override
    public OperationHold hold(HoldQuestion asked) {
        double turns = turning(asked.loads());
        double worn = turning(OperationLoads.worn(asked.loads()));
        HoldFactor factor = new HoldFactor(
                IndexLock.factor(lock.inside(), turns, Outlook.EXPECTED),
                IndexLock.factor(lock.inside(), worn, Outlook.PESSIMISTIC));
        return new OperationHold(
                asked.setUp(),
                asked.operation(),
                Joint.LOCK,
                thing,
                factor,
                "lock of the " + thing,
                "turns",
                IndexLock.FACTOR.of("torque of the cut about the axis", factor.expected(), lock));
    }

    private double turning(List<Load> loads) {
        double most = 0;
        for (Load load : loads) {
            Vector moment = load.at().minus(at).cross(load.force()).plus(load.moment());
            most = Math.max(most, Math.abs(moment.dot(axis)));
        }
        return most;
    }
}
