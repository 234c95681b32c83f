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
                if (operation.kind() == Operation.Kind.SCRIBE) {
                    continue;
                }
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
                        .map(cut -> cut.leaving(SurfacesLeft.of(question, cut), work(question, cut, setUp, part)))
                        .ifPresentOrElse(
                                found::add,
                                () -> missing.add(new NotChecked(
                                        "tool-springs", setUp.id(), operation.id(), unmodelled(operation.kind()))));
            }
        }
        return new CutPlan(found, missing);
    }

    private static List<WorkGives> work(CutQuestion question, OperationCut cut, DrawnSetUp setUp, PartPlan part) {
        return part.setUp(setUp.id())
                .map(stage -> WorkSprung.of(question, cut, stage, setUp))
                .orElse(List.of());
    }

    /** The question of one operation; empty where it cannot be asked. */
    static Optional<CutQuestion> question(DrawnUp drawnUp, Rows rows, PartPlan part, String id) {
        return drawnUp.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream()
                        .filter(operation -> operation.id().equals(id))
                        .flatMap(operation -> question(setUp, operation, rows, part).stream()))
                .findFirst();
    }

    /** A scriber only scratches: there is no load to work out, and nothing is missing. */
    static Optional<OperationCut> cut(CutQuestion question) {
        return switch (question.operation().kind()) {
            case FACE, STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, CHAMFER, WOODRUFF, SAW, FORM ->
                MilledCut.of(question);
            case SPOT, DRILL, COUNTERBORE, SPOTFACE, COUNTERSINK -> Optional.of(DrillingCut.of(question));
            case BORE -> Optional.of(BoringCut.of(question));
            case REAM -> Optional.of(ReamingCut.of(question));
            case TAP -> Optional.of(TappingCut.of(question));
            case SCRIBE -> Optional.empty();
        };
    }

    private static String unmodelled(Operation.Kind kind) {
        return switch (kind) {
            case WOODRUFF, SAW, FORM ->
                "a side that the cutter reaches and a depth: under an upright spindle a saw, a seat cutter or a gear"
                        + " cutter lies level, and what it cuts has to face the front, the back or an end";
            default ->
                "a way for the cutter past this shape: closed T-slots, tails that stand and chamfers on single"
                        + " features have none yet";
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
                setUp.id(),
                setUp.up().value(),
                operation,
                cutter.get(),
                row.get(),
                stage.get().heights(),
                CutPlace.of(on.get()),
                rows));
    }
}
