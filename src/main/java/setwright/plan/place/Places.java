package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.location.Contributor;
import setwright.location.ErrorBudget;
import setwright.location.HoleErrors;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.quantity.Given;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.shop.Axis;

/** Adds up the errors between datum and hole, for every hole with a position tolerance. */
public final class Places {
    private Places() {}

    public static PlacePlan of(DrawnUp drawnUp, Rows rows, PartPlan part) {
        List<FeatureBudget> budgets = new ArrayList<>();
        List<NotChecked> missing = new ArrayList<>();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            for (Feature feature : rows.job().plan().features()) {
                if (feature.side() != setUp.up().value() || feature.kind() != Feature.Kind.HOLE) {
                    continue;
                }
                Hole hole = (Hole) feature;
                Typed<Length> position = hole.position();
                if (position == null) {
                    continue;
                }
                Optional<DrawnOperation> drilled = drilled(setUp, hole);
                drilled.flatMap(operation -> part.operation(operation.id()))
                        .ifPresentOrElse(
                                stage -> budgets.add(budget(setUp, hole, position, stage, rows)),
                                () -> missing.add(new NotChecked(
                                        "off-tolerance", setUp.id(), "", "an operation that drills " + hole.id())));
            }
        }
        return new PlacePlan(budgets, missing);
    }

    /** The operation that sets the place of a hole: the one that bores it, else the one that drills it. */
    private static Optional<DrawnOperation> drilled(DrawnSetUp setUp, Hole hole) {
        return making(setUp, hole, Operation.Kind.BORE).or(() -> making(setUp, hole, Operation.Kind.DRILL));
    }

    private static Optional<DrawnOperation> making(DrawnSetUp setUp, Hole hole, Operation.Kind kind) {
        return setUp.operations().stream()
                .filter(operation -> operation.kind() == kind)
                .filter(operation -> operation.features().contains(hole.id()))
                .findFirst();
    }

    private static FeatureBudget budget(
            DrawnSetUp setUp, Hole hole, Typed<Length> position, OperationStage stage, Rows rows) {
        boolean dial = rows.machine().x().read() == Axis.ReadBy.DIAL
                || rows.machine().y().read() == Axis.ReadBy.DIAL;
        HoleErrors errors = dial ? HoleErrors.byDial() : HoleErrors.byReadout();
        ErrorBudget budget = ErrorBudget.fromTruePlace(errors.contributors(stage.workTop() - stage.lowest()));
        Value[] from = budget.contributors().stream()
                .map(one -> (Value)
                        Given.of(one.name(), one.amount(), Unit.MM, one.source().text()))
                .toArray(Value[]::new);
        return new FeatureBudget(
                setUp.id(),
                hole.id(),
                stage.operation(),
                ErrorBudget.radialLimit(position.inside()),
                ErrorBudget.WORST_CASE.of(budget.worstCase(), "from the true place", from),
                ErrorBudget.ROOT_SUM_SQUARE.of(budget.rootSumSquare(), "from the true place", from),
                budget.decisive(),
                budget.largest().map(Contributor::name).orElse(""),
                budget.contributors().stream()
                        .map(one -> new FeatureBudget.Contribution(
                                one.name(), one.amount(), one.source().text()))
                        .toList());
    }
}
