package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.caution.Caution;
import setwright.caution.Judge;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.Operation;

/** The block that a newcomer starts with, four M6 through and a slot 12 wide along its middle, from nothing to a plan. */
class AluminiumBlockTest {
    private final Plan plan = AluminiumBlock.plan(AluminiumBlock.tapped(), AluminiumBlock.openSlot());

    private List<DrawnOperation> operations() {
        return plan.drawnUp().setUps().get(0).operations();
    }

    @Test
    void one_set_up_mills_the_slot_before_it_makes_the_holes() {
        assertThat(plan.drawnUp().setUps()).hasSize(1);
        assertThat(operations())
                .extracting(DrawnOperation::kind)
                .containsSubsequence(
                        Operation.Kind.SLOT, Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.TAP);
    }

    @Test
    void every_operation_has_its_cut_its_grip_its_room_and_its_time() {
        for (DrawnOperation operation : operations()) {
            assertThat(plan.cut().operation(operation.id())).as(operation.id()).isPresent();
            assertThat(plan.hold().operation(operation.id())).as(operation.id()).isPresent();
            assertThat(plan.room().operation(operation.id())).as(operation.id()).isPresent();
            assertThat(plan.time().operation(operation.id()).orElseThrow().whole())
                    .as(operation.id())
                    .isPositive();
        }
        assertThat(plan.notChecked()).isEmpty();
    }

    @Test
    void nothing_stops_it() {
        assertThat(Judge.judge(plan).cautions())
                .filteredOn(caution -> caution.severity() == Severity.STOP)
                .extracting(Caution::message)
                .isEmpty();
    }
}
