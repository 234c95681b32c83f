package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.holding.HoldFactor;
import setwright.holding.Outlook;
import setwright.holding.balance.Answer;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Load;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.cut.CutPlan;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.plan.part.SetUpStage;
import setwright.quantity.Value;

/** Balances the grip of every set-up against the load of each of its operations. */
public final class Holds {
    private static final String CHECK = "slides-in-grip";

    private Holds() {}

    public static HoldPlan of(DrawnUp drawnUp, Rows rows, PartPlan part, CutPlan cut) {
        List<OperationHold> found = new ArrayList<>();
        List<OperationHold> devices = new ArrayList<>();
        List<NotChecked> missing = new ArrayList<>();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            Optional<SetUpStage> stage = part.setUp(setUp.id());
            Optional<Balance> balance = stage.flatMap(on -> Balances.of(setUp, on, rows));
            Balances.open(setUp).forEach(joint -> missing.add(new NotChecked(CHECK, setUp.id(), "", joint)));
            Optional<DeviceBalance> device = stage.flatMap(on -> DeviceBalance.of(setUp, on, rows));
            for (DrawnOperation operation : setUp.operations()) {
                Optional<OperationHold> hold = balance.flatMap(grip -> part.operation(operation.id())
                        .flatMap(on -> cut.operation(operation.id())
                                .map(load -> hold(setUp.id(), grip, stage.orElseThrow(), on, load))));
                device.flatMap(joint -> part.operation(operation.id())
                                .flatMap(on -> cut.operation(operation.id())
                                        .map(load -> joint.hold(setUp.id(), stage.orElseThrow(), on, load))))
                        .ifPresent(devices::add);
                hold.ifPresentOrElse(
                        found::add,
                        () -> missing.add(new NotChecked(
                                CHECK, setUp.id(), operation.id(), "the device, the cutter and its load")));
            }
        }
        return new HoldPlan(found, devices, missing);
    }

    private static OperationHold hold(
            String setUp, Balance grip, SetUpStage stage, OperationStage on, OperationCut cut) {
        List<Load> loads = OperationLoads.of(stage.heights(), on, cut);
        return hold(
                setUp,
                on.operation(),
                grip.answer(Outlook.EXPECTED, loads),
                grip.answer(Outlook.PESSIMISTIC, OperationLoads.worn(loads)),
                grip.given());
    }

    static OperationHold hold(String setUp, String operation, Answer expected, Answer pessimistic, Value given) {
        return new OperationHold(
                setUp,
                operation,
                HoldFactor.of(expected, pessimistic),
                firstToGive(expected),
                motion(expected),
                FrictionBalance.worked(expected, given));
    }

    private static String firstToGive(Answer answer) {
        return switch (answer.kind()) {
            case HOLDS -> ((Answer.Holds) answer).firstToGive().name();
            case DOES_NOT_STAND -> ((Answer.DoesNotStand) answer).firstToGive().name();
            case BEYOND_ASKED -> "";
        };
    }

    private static String motion(Answer answer) {
        return switch (answer.kind()) {
            case HOLDS -> ((Answer.Holds) answer).motion().kind().word();
            case DOES_NOT_STAND ->
                ((Answer.DoesNotStand) answer).motion().kind().word();
            case BEYOND_ASKED -> "";
        };
    }
}
