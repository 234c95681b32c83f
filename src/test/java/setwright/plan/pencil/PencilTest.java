package setwright.plan.pencil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.job.RouteEdits;
import setwright.job.SetUp;
import setwright.plan.BearingBlock;
import setwright.plan.Rows;
import setwright.shop.Shop;

class PencilTest {
    private final Shop shop = BearingBlock.shop();
    private final Job job = BearingBlock.topAlone();

    @Test
    void an_operation_that_nobody_wrote_is_added_once_where_two_set_ups_have_its_side_up() {
        Job twice = RouteEdits.duplicated(drawnUp(job), "s1").job();
        Job emptied = twice.withPlan(twice.plan()
                .withSetUps(twice.plan().setUps().stream()
                        .map(setUp -> setUp.withOperations(List.of()))
                        .toList()));

        DrawnUp drawnUp = drawnUp(emptied);

        assertThat(drawnUp.setUps()).hasSize(2);
        assertThat(operations(drawnUp)).doesNotHaveDuplicates().isEqualTo(operations(drawnUp(job)));
        assertThat(drawnUp.setUps().get(1).operations()).isEmpty();
    }

    @Test
    void a_pencilled_set_up_never_takes_the_id_of_a_written_one() {
        Job turned = RouteEdits.added(drawnUp(job), "s1").job();
        List<SetUp> bottomOnly = turned.plan().setUps().subList(1, 2);

        DrawnUp drawnUp = drawnUp(turned.withPlan(turned.plan().withSetUps(bottomOnly)));

        assertThat(drawnUp.setUps()).extracting(DrawnSetUp::id).containsExactly("s2", "s3");
    }

    private DrawnUp drawnUp(Job drawn) {
        return Pencil.drawUp(drawn, Rows.of(drawn, shop));
    }

    private static List<String> operations(DrawnUp drawnUp) {
        return drawnUp.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .map(DrawnOperation::id)
                .toList();
    }
}
