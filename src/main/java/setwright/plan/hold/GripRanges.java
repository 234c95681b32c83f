package setwright.plan.hold;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.holding.GripLimits;
import setwright.holding.Outlook;
import setwright.holding.balance.Load;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnTable;
import setwright.job.DrawnUp;
import setwright.plan.Rows;
import setwright.plan.cut.CutPlan;
import setwright.plan.part.PartPlan;
import setwright.plan.part.SetUpStage;

/** The question the other way round: how hard a vise is closed, or its nuts are done up, at least and at most. */
public final class GripRanges {
    /** Trials that find the least; each halves what is open. */
    private static final int HALVINGS = 14;

    /** More times what is asked now is not looked at. */
    private static final double LOOKED_AT = 32;

    private final DrawnSetUp setUp;
    private final SetUpStage stage;
    private final Rows rows;
    private final Balance balance;
    private final List<Load> loads;

    private GripRanges(DrawnSetUp setUp, SetUpStage stage, Rows rows, Balance balance, List<Load> loads) {
        this.setUp = setUp;
        this.stage = stage;
        this.rows = rows;
        this.balance = balance;
        this.loads = loads;
    }

    /** For the operation of the set-up that is held least; empty where nothing is gripped by hand, or nothing is balanced. */
    public static Optional<GripRange> of(
            DrawnUp drawnUp, Rows rows, PartPlan part, CutPlan cut, HoldPlan hold, String setUp) {
        Optional<OperationHold> weakest = hold.operations().stream()
                .filter(one -> one.setUp().equals(setUp))
                .min(Comparator.comparingDouble(GripRanges::share));
        return weakest.flatMap(held -> drawnUp.setUp(setUp)
                .flatMap(drawn -> part.setUp(setUp)
                        .flatMap(stage -> part.operation(held.operation())
                                .flatMap(on -> cut.operation(held.operation())
                                        .map(load -> OperationLoads.of(stage.heights(), on, load))
                                        .flatMap(loads -> Balances.of(drawn, stage, rows)
                                                .map(balance -> new GripRanges(drawn, stage, rows, balance, loads))
                                                .flatMap(range -> range.of(held.operation())))))));
    }

    /** Of what is asked of it, on the outlook that has less. */
    private static double share(OperationHold hold) {
        return Math.min(
                hold.factor().expected() / GripLimits.USUAL.cautionExpected(),
                hold.factor().pessimistic() / GripLimits.USUAL.cautionPessimistic());
    }

    private Optional<GripRange> of(String operation) {
        Optional<GripMost> most = switch (setUp.holding().kind()) {
            case VISE -> GripMost.inVise(setUp, stage, rows);
            case TABLE -> GripMost.underStraps(setUp.id(), ((DrawnTable) setUp.holding()).straps(), stage, rows);
            case DEVICE -> Optional.empty();
        };
        GripRange.By by = setUp.holding().kind() == DrawnHolding.Kind.VISE ? GripRange.By.VISE : GripRange.By.NUT;
        return most.map(found -> new GripRange(
                setUp.id(), by, found.now(), found.now() * least(), operation, found.most(), found.because()));
    }

    /** How many times what is asked now holds with the factors asked; infinite where nothing looked at does. */
    private double least() {
        if (!holds(LOOKED_AT)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = LOOKED_AT;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (holds(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private boolean holds(double times) {
        Balance scaled = balance.scaled(times);
        return scaled.answer(Outlook.EXPECTED, loads).factor() >= GripLimits.USUAL.cautionExpected()
                && scaled.answer(Outlook.PESSIMISTIC, OperationLoads.worn(loads))
                                .factor()
                        >= GripLimits.USUAL.cautionPessimistic();
    }
}
