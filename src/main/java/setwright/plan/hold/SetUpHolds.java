package setwright.plan.hold;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.holding.balance.Load;
import setwright.job.DrawnSetUp;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;
import setwright.plan.part.SetUpStage;

/** The balances of one set-up, made when the first operation asks for them. */
final class SetUpHolds {
    private final DrawnSetUp setUp;
    private final SetUpStage stage;
    private final Rows rows;
    private @Nullable Joints joints;

    private record Joints(Optional<Balance> part, List<JointBalance> devices) {}

    SetUpHolds(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        this.setUp = setUp;
        this.stage = stage;
        this.rows = rows;
    }

    Heights heights() {
        return stage.heights();
    }

    HoldQuestion question(OperationStage on, List<Load> loads) {
        return new HoldQuestion(
                on.operation(), setUp.id(), setUp.holding(), stage.heights(), stage.fixtures(), stage.start(), loads);
    }

    HoldAnswer answer(HoldQuestion question) {
        Joints made = joints();
        return new HoldAnswer(
                made.part.map(balance -> Holds.hold(question, Joint.PART, "part", balance)),
                made.devices.stream().map(joint -> joint.hold(question)).toList());
    }

    private Joints joints() {
        Joints made = joints;
        if (made == null) {
            made = new Joints(Balances.of(setUp, stage, rows), Chain.of(setUp, stage, rows));
            joints = made;
        }
        return made;
    }
}
