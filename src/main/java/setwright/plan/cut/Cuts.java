package setwright.plan.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Operation;
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
                cut(question)
                        .ifPresentOrElse(
                                found::add,
                                () -> missing.add(new NotChecked(
                                        "tool-springs", setUp.id(), operation.id(), unmodelled(operation.kind()))));
            }
        }
        return new CutPlan(found, missing);
    }

    private static Optional<OperationCut> cut(CutQuestion question) {
        return switch (question.operation().kind()) {
            case FACE, STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, CHAMFER ->
                question.stage().runs() > 0 ? Optional.of(MilledCut.of(question)) : Optional.empty();
            case SPOT, DRILL, COUNTERBORE, SPOTFACE, COUNTERSINK -> Optional.of(DrillingCut.of(question));
            case BORE -> Optional.of(BoringCut.of(question));
            case REAM -> Optional.of(ReamingCut.of(question));
            case TAP -> Optional.of(TappingCut.of(question));
            case WOODRUFF, SAW, FORM, SCRIBE -> Optional.empty();
        };
    }

    private static String unmodelled(Operation.Kind kind) {
        return switch (kind) {
            case WOODRUFF, SAW ->
                "a spindle that lies along the side that is up: under an upright spindle a saw or a seat cutter lies"
                        + " level, and the side that it cuts has to face the front, the back or an end";
            default -> "the load of this kind of cut on this shape, which is not modelled yet";
        };
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
