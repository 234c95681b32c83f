package setwright.plan.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.plan.part.SetUpStage;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;

/** Works out every operation's cut. */
public final class Cuts {
    private Cuts() {}

    public static CutPlan of(DrawnUp drawnUp, Rows rows, PartPlan part) {
        List<OperationCut> found = new ArrayList<>();
        List<NotChecked> missing = new ArrayList<>();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            for (DrawnOperation operation : setUp.operations()) {
                CutQuestion question = question(setUp, operation, rows, part).orElse(null);
                if (question == null) {
                    missing.add(new NotChecked(
                            "tool-springs",
                            setUp.id(),
                            operation.id(),
                            "a cutter in its holder, and a row of cutting speeds for it in "
                                    + rows.material().name()));
                    continue;
                }
                found.add(
                        switch (operation.kind()) {
                            case FACE -> FacingCut.of(question);
                            case SPOT, DRILL -> DrillingCut.of(question);
                            case REAM -> ReamingCut.of(question);
                            case TAP -> TappingCut.of(question);
                        });
            }
        }
        return new CutPlan(found, missing);
    }

    private static Optional<CutQuestion> question(
            DrawnSetUp setUp, DrawnOperation operation, Rows rows, PartPlan part) {
        Optional<Cutter> cutter = rows.cutter(operation.cutter().value());
        Optional<SetUpStage> stage = part.setUp(setUp.id());
        Optional<OperationStage> on = part.operation(operation.id());
        Optional<CuttingSpeed> row = cutter.flatMap(tool -> rows.cuttingSpeed(tool.form(), tool.material()));
        if (cutter.isEmpty() || stage.isEmpty() || on.isEmpty() || row.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CutQuestion(
                setUp.id(), operation, cutter.get(), row.get(), stage.get().heights(), on.get(), rows));
    }
}
