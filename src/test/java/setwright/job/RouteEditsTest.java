package setwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;

class RouteEditsTest {
    @Test
    void a_further_set_up_stands_behind_the_chosen_one_with_the_part_turned_over() {
        Added added = RouteEdits.added(EditsTest.pencilled(), "s1");

        assertThat(ids(added.job())).containsExactly("s1", "s3", "s2");
        assertThat(added.id()).isEqualTo("s3");
        SetUp further = added.job().plan().setUps().get(1);
        assertThat(further.up()).isEqualTo(Plannable.inked(Side.BOTTOM));
        assertThat(further.title()).isEqualTo("Bottom side up");
        assertThat(further.operations()).isEmpty();
    }

    @Test
    void a_change_of_the_route_first_writes_down_every_operation_in_pencil() {
        Job job = RouteEdits.added(EditsTest.pencilled(), "s2").job();

        assertThat(operations(job, 0)).containsExactly("spot", "drill", "tap");
        assertThat(operations(job, 1)).containsExactly("spot2", "drill2", "tap2");
        assertThat(job.plan().setUps().get(0).operations().get(1))
                .isEqualTo(Operation.pencilled("drill", Operation.Kind.DRILL, List.of("hole")));
    }

    @Test
    void a_set_up_is_duplicated_with_its_ink_under_ids_of_its_own() {
        Job inked = Edits.set(EditsTest.pencilled(), "drill", OperationField.HOLDER, Plannable.inked("chuck"));
        Added added =
                RouteEdits.duplicated(new DrawnUp(inked, EditsTest.pencilled().setUps()), "s1");

        assertThat(ids(added.job())).containsExactly("s1", "s3", "s2");
        assertThat(operations(added.job(), 1)).containsExactly("spot-2", "drill-2", "tap-2");
        assertThat(added.job().plan().setUps().get(1).operations().get(1).holder())
                .isEqualTo(Plannable.inked("chuck"));
        assertThat(OperationEdits.ids(added.job().plan().setUps())).doesNotHaveDuplicates();
    }

    @Test
    void a_set_up_is_deleted_and_its_number_is_not_given_to_another_that_still_stands() {
        Job without = RouteEdits.deleted(EditsTest.pencilled(), "s1");
        assertThat(ids(without)).containsExactly("s2");

        DrawnUp drawnUp =
                new DrawnUp(without, List.of(EditsTest.pencilled().setUps().get(1)));
        assertThat(RouteEdits.added(drawnUp, "s2").id()).isEqualTo("s3");
    }

    @Test
    void a_set_up_moves_along_the_route_and_stops_at_its_ends() {
        assertThat(ids(RouteEdits.moved(EditsTest.pencilled(), "s1", 1))).containsExactly("s2", "s1");
        assertThat(ids(RouteEdits.moved(EditsTest.pencilled(), "s2", -5))).containsExactly("s2", "s1");
        assertThat(ids(RouteEdits.moved(EditsTest.pencilled(), "s2", 1))).containsExactly("s1", "s2");
    }

    @Test
    void an_operation_is_added_behind_the_chosen_one_with_all_its_values_pencilled() {
        Added added = OperationEdits.added(EditsTest.pencilled(), "s1", "spot", Operation.Kind.DRILL, List.of("hole"));

        assertThat(added.id()).isEqualTo("hole-drill");
        assertThat(operations(added.job(), 0)).containsExactly("spot", "hole-drill", "drill", "tap");
        assertThat(added.job().plan().setUps().get(0).operations().get(1))
                .isEqualTo(Operation.pencilled("hole-drill", Operation.Kind.DRILL, List.of("hole")));
    }

    @Test
    void where_no_operation_is_chosen_the_new_one_comes_first() {
        Added added = OperationEdits.added(EditsTest.pencilled(), "s2", "", Operation.Kind.SPOT, List.of());

        assertThat(operations(added.job(), 1)).startsWith("s2-spot");
    }

    @Test
    void an_operation_is_duplicated_deleted_and_moved_within_its_set_up() {
        Added twice = OperationEdits.duplicated(EditsTest.pencilled(), "drill");
        assertThat(operations(twice.job(), 0)).containsExactly("spot", "drill", "drill-2", "tap");
        assertThat(twice.id()).isEqualTo("drill-2");

        assertThat(operations(OperationEdits.deleted(EditsTest.pencilled(), "drill"), 0))
                .containsExactly("spot", "tap");
        assertThat(operations(OperationEdits.moved(EditsTest.pencilled(), "drill", 1), 0))
                .containsExactly("spot", "tap", "drill");
        assertThat(operations(OperationEdits.moved(EditsTest.pencilled(), "tap", -2), 0))
                .containsExactly("tap", "spot", "drill");
    }

    @Test
    void what_is_not_there_is_named() {
        assertThatThrownBy(() -> RouteEdits.moved(EditsTest.pencilled(), "s7", 1))
                .hasMessage("The drawn-up job has no set-up s7.");
        assertThatThrownBy(() -> OperationEdits.deleted(EditsTest.pencilled(), "bore"))
                .hasMessage("The drawn-up job has no operation bore.");
    }

    private static List<String> ids(Job job) {
        return job.plan().setUps().stream().map(SetUp::id).toList();
    }

    private static List<String> operations(Job job, int setUp) {
        return job.plan().setUps().get(setUp).operations().stream()
                .map(Operation::id)
                .toList();
    }
}
