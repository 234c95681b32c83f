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
import setwright.job.Operation;
import setwright.plan.Kept;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.cut.CutPlan;
import setwright.plan.part.PartPlan;

/** Balances the grip of every set-up against the load of each of its operations. */
public final class Holds {
    private static final String CHECK = "slides-in-grip";

    private Holds() {}

    /** @param kept answers of the plan before this one, where it was made with the same rows */
    public static HoldPlan of(
            DrawnUp drawnUp, Rows rows, PartPlan part, CutPlan cut, Kept<HoldQuestion, HoldAnswer> kept) {
        List<OperationHold> found = new ArrayList<>();
        List<OperationHold> devices = new ArrayList<>();
        List<NotChecked> missing = new ArrayList<>();
        Kept.Round<HoldQuestion, HoldAnswer> round = kept.round();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            Chain.open(setUp, rows).forEach(joint -> missing.add(new NotChecked(CHECK, setUp.id(), "", joint)));
            Optional<SetUpHolds> holds = part.setUp(setUp.id()).map(stage -> new SetUpHolds(setUp, stage, rows));
            for (DrawnOperation operation : setUp.operations()) {
                if (operation.kind() == Operation.Kind.SCRIBE) {
                    continue;
                }
                Optional<HoldAnswer> answer = holds.flatMap(on -> part.operation(operation.id())
                        .flatMap(stage -> cut.operation(operation.id())
                                .map(load -> OperationLoads.of(on.heights(), stage, load))
                                .filter(loads -> !loads.isEmpty())
                                .map(loads -> round.answer(operation.id(), on.question(stage, loads), on::answer))));
                answer.map(HoldAnswer::devices).ifPresent(devices::addAll);
                answer.flatMap(HoldAnswer::part)
                        .ifPresentOrElse(
                                found::add,
                                () -> missing.add(new NotChecked(
                                        CHECK,
                                        setUp.id(),
                                        operation.id(),
                                        "the device, the cutter, its way and its load")));
            }
        }
        return new HoldPlan(found, devices, missing, round.kept());
    }

    static OperationHold hold(HoldQuestion asked, Joint joint, String thing, Balance balance) {
        List<Load> loads = asked.loads();
        Answer expected = balance.answer(Outlook.EXPECTED, loads);
        Answer pessimistic = balance.answer(Outlook.PESSIMISTIC, OperationLoads.worn(loads));
        return new OperationHold(
                asked.setUp(),
                asked.operation(),
                joint,
                thing,
                HoldFactor.of(expected, pessimistic),
                firstToGive(expected),
                motion(expected),
                FrictionBalance.worked(expected, balance.given()));
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
