package setwright.plan.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnUp;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Relation;
import setwright.location.ErrorBudget;
import setwright.location.budget.ProcessGrade;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.cut.CutPlan;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Adds up the errors between datum and feature, for all that has a tolerance of its own and every relation. */
public final class Places {
    private static final String CHECK = "off-tolerance";

    private final DrawnUp drawnUp;
    private final Rows rows;
    private final PartPlan part;
    private final CutPlan cut;
    private final List<FeatureBudget> budgets = new ArrayList<>();
    private final List<NotChecked> missing = new ArrayList<>();

    private Places(DrawnUp drawnUp, Rows rows, PartPlan part, CutPlan cut) {
        this.drawnUp = drawnUp;
        this.rows = rows;
        this.part = part;
        this.cut = cut;
    }

    public static PlacePlan of(DrawnUp drawnUp, Rows rows, PartPlan part, CutPlan cut) {
        Places places = new Places(drawnUp, rows, part, cut);
        rows.job().plan().features().stream().filter(places::isCut).forEach(places::feature);
        rows.job().plan().relations().forEach(places::relation);
        return new PlacePlan(places.budgets, places.missing);
    }

    private boolean isCut(Feature feature) {
        return !rows.job().plan().received().contains(feature.id());
    }

    private void feature(Feature feature) {
        if (feature.kind() == Feature.Kind.HOLE) {
            Typed<Length> position = ((Hole) feature).position();
            if (position != null) {
                place((Hole) feature, position);
            }
        }
        Asked.of(feature).forEach(this::size);
    }

    private void place(Hole hole, Typed<Length> position) {
        Optional<Making> making = Making.place(drawnUp, hole);
        Optional<OperationStage> stage = making.flatMap(this::stage);
        if (making.isEmpty() || stage.isEmpty()) {
            missing.add(needs(making, "an operation that drills " + hole.id()));
            return;
        }
        Making by = making.get();
        ErrorBudget budget =
                ErrorBudget.fromTruePlace(new HolePlace(loading(by), hole, by, stage.get()).contributors());
        budgets.add(FeatureBudget.of(
                where(by, hole.id(), Aspect.PLACE, ""),
                budget,
                ErrorBudget.radialLimit(position.inside()),
                FeatureBudget.Opinion.NONE));
    }

    private void size(Asked asked) {
        Optional<Making> making = Making.size(drawnUp, asked);
        boolean cuts = making.flatMap(by -> rows.cutter(by.operation().cutter().value()))
                .isPresent();
        if (making.isEmpty() || !cuts) {
            missing.add(needs(
                    making,
                    "an operation with a cutter that makes " + asked.feature().id()));
            return;
        }
        Making by = making.get();
        ErrorBudget budget = ErrorBudget.alongAnAxis(new SizeErrors(rows, cut, loading(by), by, asked).contributors());
        ProcessGrade grade = grade(by.operation().kind());
        budgets.add(FeatureBudget.of(
                where(by, asked.feature().id(), asked.aspect(), ""),
                budget,
                asked.half(),
                new FeatureBudget.Opinion(
                        grade.opinion(asked.nominal(), 2 * asked.half()),
                        grade.seldomReaches(asked.nominal(), 2 * asked.half()))));
    }

    private static ProcessGrade grade(Operation.Kind kind) {
        return switch (kind) {
            case DRILL, SPOT, COUNTERSINK -> ProcessGrade.DRILLING;
            case REAM -> ProcessGrade.REAMING;
            case BORE -> ProcessGrade.BORING;
            default -> ProcessGrade.MILLING;
        };
    }

    private void relation(Relation relation) {
        Optional<RelationErrors.Side> of = side(relation.of());
        Optional<RelationErrors.Side> to = side(relation.to());
        if (of.isEmpty() || to.isEmpty()) {
            missing.add(new NotChecked(
                    CHECK, "", "", "an operation that makes " + (of.isEmpty() ? relation.of() : relation.to())));
            return;
        }
        Making by = of.get().making();
        double length = part.setUp(by.setUp().id())
                .map(stage -> stage.heights().length())
                .orElse(0.0);
        RelationErrors errors = new RelationErrors(relation, of.get(), to.get(), length);
        budgets.add(FeatureBudget.of(
                where(by, relation.of(), aspect(relation.kind()), relation.to()),
                errors.budget(),
                errors.limit(),
                FeatureBudget.Opinion.NONE));
    }

    private Optional<RelationErrors.Side> side(String id) {
        return rows.job().plan().features().stream()
                .filter(feature -> feature.id().equals(id))
                .findFirst()
                .flatMap(feature -> Making.place(drawnUp, feature)
                        .flatMap(making -> stage(making)
                                .map(stage -> new RelationErrors.Side(loading(making), feature, making, stage))));
    }

    private static Aspect aspect(Relation.Kind kind) {
        return switch (kind) {
            case PARALLEL -> Aspect.PARALLEL;
            case SQUARE -> Aspect.SQUARE;
            case COAXIAL -> Aspect.COAXIAL;
            case IN_LINE -> Aspect.IN_LINE;
            case POSITION -> Aspect.POSITION;
            case DEPTH -> Aspect.DEPTH_BETWEEN;
            case ANGULAR -> Aspect.ANGULAR;
        };
    }

    private Optional<OperationStage> stage(Making making) {
        return part.operation(making.operation().id());
    }

    private Loading loading(Making making) {
        return new Loading(making.setUp(), rows);
    }

    private static FeatureBudget.Where where(Making making, String feature, Aspect aspect, String to) {
        return new FeatureBudget.Where(making.setUp().id(), making.operation().id(), feature, aspect, to);
    }

    private static NotChecked needs(Optional<Making> making, String needs) {
        return new NotChecked(CHECK, making.map(by -> by.setUp().id()).orElse(""), "", needs);
    }
}
