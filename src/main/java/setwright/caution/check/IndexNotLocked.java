package setwright.caution.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.plane.PlanBox;
import setwright.holding.GripLimits;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.plan.NotChecked;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;
import setwright.shop.DividingHead;
import setwright.shop.RotaryTable;

/** The cut turns a rotary table or dividing head harder than its lock holds. One caution a set-up. */
public final class IndexNotLocked implements Check {
    private static final double ASKED = GripLimits.USUAL.cautionExpected();

    @Override
    public String slug() {
        return "index-not-locked";
    }

    /** An operation and how many times its turning the lock bears. */
    private record Turned(Operations.In in, double factor) {}

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
        DrawnDevice holding = (DrawnDevice) setUp.holding();
        Optional<Double> lock = lock(plan, holding.device().value());
        if (lock.isEmpty()) {
            return new Finding.Unlooked(
                    new NotChecked(slug(), setUp.id(), "", "the torque that the lock of the device holds"));
        }
        return turned(plan, setUp, lock.get())
                .min(Comparator.comparingDouble(Turned::factor))
                .map(least -> judged(plan, least))
                .orElse(Finding.HOLDS);
    }

    private static Optional<Double> lock(Plan plan, String device) {
        return plan.rows()
                .row(device, RotaryTable.class)
                .flatMap(row -> Optional.ofNullable(row.lock()))
                .or(() -> plan.rows().row(device, DividingHead.class).flatMap(row -> Optional.ofNullable(row.lock())))
                .map(typed -> typed.inside());
    }

    private static Stream<Turned> turned(Plan plan, DrawnSetUp setUp, double lock) {
        DrawnDevice holding = (DrawnDevice) setUp.holding();
        double x = holding.x().value().inside();
        double y = holding.y().value().inside();
        return Operations.in(plan, setUp)
                .flatMap(in -> plan.cut().operation(in.operation().id()).stream()
                        .flatMap(cut -> plan.part().operation(in.operation().id()).stream()
                                .map(on -> new Turned(in, lock / Math.max(1, load(cut, on, x, y))))));
    }

    private static double load(OperationCut cut, OperationStage on, double x, double y) {
        PlanBox path = on.path().box().plan();
        double right = Math.max(Math.abs(path.xLow() - x), Math.abs(path.xHigh() - x));
        double back = Math.max(Math.abs(path.yLow() - y), Math.abs(path.yHigh() - y));
        double side = Optional.ofNullable(cut.peakForce())
                .map(force -> force.inside())
                .orElse(0.0);
        return cut.torque().inside() + side * StrictMath.hypot(right, back);
    }

    private Finding judged(Plan plan, Turned least) {
        Operations.In in = least.in();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(in.setUp().id(), in.operation().id(), "lock", "the lock"),
                "Lock of the device against " + in.cutter(),
                Figure.atLeast(ASKED, least.factor(), Unit.NONE));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        var printing = new Words(plan).printing();
        return Finding.fails(
                margin,
                Severity.CAUTION,
                "The lock of the device bears " + printing.factor(least.factor()) + " times what " + in.cutter()
                        + " turns it with " + in.at() + "; " + printing.factor(ASKED)
                        + " times are asked. The worm takes the rest and the division is lost: take less, nearer to"
                        + " the middle, or put a stop against it.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return CutChanges.of(plan, caution).shallower();
    }
}
