package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.holding.GripVerdict;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.plan.NotChecked;
import setwright.plan.Plan;
import setwright.plan.hold.Joint;
import setwright.plan.hold.OperationHold;

/** The cut turns a rotary table or dividing head harder than its lock holds. One caution a set-up. */
public final class IndexNotLocked implements Check {
    @Override
    public String slug() {
        return "index-not-locked";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .filter(IndexNotLocked::indexes)
                .map(setUp -> look(plan, setUp))
                .toList();
    }

    private static boolean indexes(DrawnSetUp setUp) {
        DrawnHolding holding = setUp.holding();
        if (holding.kind() != DrawnHolding.Kind.DEVICE) {
            return false;
        }
        DeviceHolding.On on = ((DrawnDevice) holding).on();
        return on == DeviceHolding.On.ROTARY_TABLE || on == DeviceHolding.On.DIVIDING_HEAD;
    }

    private Finding look(Plan plan, DrawnSetUp setUp) {
        return plan.hold().devices().stream()
                .filter(hold -> hold.setUp().equals(setUp.id()) && hold.joint() == Joint.LOCK)
                .map(GripMargin::of)
                .min(GripMargin.LEAST_FIRST)
                .map(least -> judged(plan, least))
                .orElseGet(() -> nothingTurns(plan, setUp));
    }

    /** Nothing is cut there, as when a scale is scribed; or nobody knows what the lock holds. */
    private Finding nothingTurns(Plan plan, DrawnSetUp setUp) {
        boolean open = plan.hold().notChecked().stream()
                .anyMatch(one -> one.setUp().equals(setUp.id()) && one.needs().contains("that the lock of"));
        return open
                ? new Finding.Unlooked(
                        new NotChecked(slug(), setUp.id(), "", "the torque that the lock of the device holds"))
                : Finding.HOLDS;
    }

    private Finding judged(Plan plan, GripMargin least) {
        OperationHold hold = least.hold();
        Words words = new Words(plan);
        String cutter = words.cutter(Operations.operation(plan, hold.setUp(), hold.operation()));
        Margin margin = Margin.of(
                        slug(),
                        Caution.Place.worstAt(hold.setUp(), hold.operation(), "lock", "the lock"),
                        "Lock of the device against " + cutter,
                        least.deciding())
                .between(least.band());
        if (least.verdict() == GripVerdict.HOLDS) {
            return Finding.holds(margin);
        }
        var print = words.printing();
        return Finding.fails(
                margin,
                Severity.CAUTION,
                "The lock of the " + hold.thing() + " bears "
                        + print.factor(hold.factor().expected()) + " times what " + cutter + " turns it with, "
                        + print.factor(hold.factor().pessimistic()) + " on a bad day "
                        + Words.at(hold.setUp(), hold.operation()) + "; " + print.factor(least.askedUsually()) + " and "
                        + print.factor(least.askedOnABadDay())
                        + " are asked. The worm takes the rest and the division is lost: take less, nearer to the"
                        + " middle, or put a stop against it.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return CutChanges.of(plan, caution).shallower();
    }
}
