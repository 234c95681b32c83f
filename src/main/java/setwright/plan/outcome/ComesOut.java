package setwright.plan.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Feature;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.plan.part.SetUpStage;
import setwright.shop.Cutter;

/** Holds what each operation's cutter makes against what its features ask. */
public final class ComesOut {
    /** What is less than this is nobody's business, mm. */
    static final double NOTHING = 0.01;

    private final List<Odd> found = new ArrayList<>();
    private final Rows rows;

    private ComesOut(Rows rows) {
        this.rows = rows;
    }

    /** Every feature of an operation that comes out otherwise, in working order. */
    public static List<Odd> of(DrawnUp drawnUp, Rows rows, PartPlan part) {
        ComesOut all = new ComesOut(rows);
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            part.setUp(setUp.id()).ifPresent(stage -> all.look(setUp, stage));
        }
        return List.copyOf(all.found);
    }

    private void look(DrawnSetUp setUp, SetUpStage stage) {
        for (DrawnOperation operation : setUp.operations()) {
            Optional<Cutter> cutter = rows.cutter(operation.cutter().value());
            Optional<OperationStage> on = stage.operations().stream()
                    .filter(one -> one.operation().equals(operation.id()))
                    .findFirst();
            if (cutter.isPresent() && on.isPresent()) {
                features(operation)
                        .forEach(feature -> look(
                                new Seen(setUp.id(), operation, feature, cutter.get(), stage.heights(), on.get())));
            }
        }
    }

    private List<Feature> features(DrawnOperation operation) {
        return operation.features().stream()
                .flatMap(id -> rows.job().plan().features().stream()
                        .filter(feature -> feature.id().equals(id)))
                .toList();
    }

    private void look(Seen seen) {
        found.addAll(seen.operation().kind().inHole() ? new HoleMade(seen).odd() : new MilledMade(seen).odd());
    }

    /** One feature of one operation. */
    record Seen(
            String setUp,
            DrawnOperation operation,
            Feature feature,
            Cutter cutter,
            Heights heights,
            OperationStage stage) {
        /** Nothing where the amount is too small to speak of. */
        List<Odd> left(double mm, String where) {
            return odd(Odd.What.LEFT_STANDING, mm, where);
        }

        List<Odd> tooMuch(double mm, String where) {
            return odd(Odd.What.CUT_TOO_MUCH, mm, where);
        }

        private List<Odd> odd(Odd.What what, double mm, String where) {
            return mm > NOTHING ? List.of(new Odd(setUp, operation.id(), feature.id(), what, mm, where)) : List.of();
        }
    }
}
