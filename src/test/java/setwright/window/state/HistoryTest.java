package setwright.window.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.job.Block;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.MachineAsItStands;
import setwright.job.Size;
import setwright.job.Title;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

class HistoryTest {
    @Test
    void steps_are_taken_back_and_done_again_by_name() {
        History history = History.of(off(12)).step("Number off to 20", "", off(20));

        assertThat(history.undoStep()).contains("Number off to 20");
        assertThat(history.undo().job()).isEqualTo(off(12));
        assertThat(history.undo().undoStep()).isEmpty();
        assertThat(history.undo().redoStep()).contains("Number off to 20");
        assertThat(history.undo().redo().job()).isEqualTo(off(20));
    }

    @Test
    void an_edit_that_changes_nothing_is_no_step_and_keeps_what_was_undone() {
        History undone =
                History.of(off(12)).step("Number off to 20", "", off(20)).undo();
        History same = undone.step("Number off to 12", "", off(12));

        assertThat(same.undoStep()).isEmpty();
        assertThat(same.redoStep()).contains("Number off to 20");
    }

    @Test
    void typing_in_one_field_is_one_step() {
        History history = History.of(off(12))
                .step("Number off to 2", "numberOff", off(2))
                .step("Number off to 24", "numberOff", off(24));

        assertThat(history.undoStep()).contains("Number off to 24");
        assertThat(history.undo().job()).isEqualTo(off(12));
    }

    @Test
    void typing_that_leads_back_to_where_it_began_is_no_step() {
        History history = History.of(off(5))
                .step("Number off to 12", "", off(12))
                .step("Number off to 1", "numberOff", off(1))
                .step("Number off to 12", "numberOff", off(12));

        assertThat(history.undoStep()).contains("Number off to 12");
        assertThat(history.undo().job()).isEqualTo(off(5));
    }

    @Test
    void what_is_being_typed_is_withdrawn_without_a_trace() {
        History history = History.of(off(12)).step("Number off to 20", "", off(20));
        History typing = history.step("Number off to 2", "numberOff", off(2));

        assertThat(typing.withdrawn("numberOff").job()).isEqualTo(off(20));
        assertThat(typing.withdrawn("numberOff").redoStep()).isEmpty();
        assertThat(typing.withdrawn("length").job()).isEqualTo(off(2));
        assertThat(typing.closed().withdrawn("numberOff").job()).isEqualTo(off(2));
    }

    @Test
    void a_state_put_otherwise_is_no_step_of_its_own() {
        History history =
                History.of(off(12)).step("Number off to 20", "", off(20)).restated(off(21));

        assertThat(history.job()).isEqualTo(off(21));
        assertThat(history.undoStep()).contains("Number off to 20");
        assertThat(history.undo().job()).isEqualTo(off(12));
        assertThat(history.undo().redo().job()).isEqualTo(off(21));
    }

    @Test
    void what_is_typed_after_the_field_was_left_is_another_step() {
        History history = History.of(off(12))
                .step("Number off to 2", "numberOff", off(2))
                .closed()
                .step("Number off to 24", "numberOff", off(24));

        assertThat(history.undo().job()).isEqualTo(off(2));
    }

    @Test
    void a_step_drops_what_was_undone() {
        History history =
                History.of(off(12)).step("Number off to 20", "", off(20)).undo().step("Number off to 30", "", off(30));

        assertThat(history.redoStep()).isEmpty();
        assertThat(history.undo().job()).isEqualTo(off(12));
    }

    @Test
    void undo_leaves_the_record_as_it_is() {
        JobRecord.Acceptance acceptance = new JobRecord.Acceptance(
                "tool-springs/s1/o3/cutter", JobRecord.Role.LEAD, "Ada", "roughing only", "2025-05-02", "0.04");
        History history = History.of(off(12)).step("Number off to 20", "", off(20));
        History accepted = history.recorded(history.job().record().accepting(acceptance));

        assertThat(accepted.undo().job().plan()).isEqualTo(off(12).plan());
        assertThat(accepted.undo().job().record().acceptances()).containsExactly(acceptance);
    }

    @Test
    void there_is_no_limit_to_undo() {
        History history = History.of(off(0));
        for (int i = 1; i <= 50_000; i++) {
            history = history.step("Number off to " + i, "", off(i));
        }
        for (int i = 1; i <= 50_000; i++) {
            history = history.undo();
        }

        assertThat(history.job()).isEqualTo(off(0));
        assertThat(history.redo().job()).isEqualTo(off(1));
    }

    @Test
    void undo_and_redo_walk_over_any_steps_as_over_a_list() {
        Rounds.each(41, (random, round) -> {
            List<Integer> states = new ArrayList<>(List.of(0));
            int at = 0;
            History history = History.of(off(0));
            for (int i = 0; i < 60; i++) {
                switch (random.nextInt(3)) {
                    case 0 -> {
                        history = history.undo();
                        at = Math.max(0, at - 1);
                    }
                    case 1 -> {
                        history = history.redo();
                        at = Math.min(states.size() - 1, at + 1);
                    }
                    default -> {
                        int off = random.nextInt(1000);
                        history = history.step("Number off to " + off, "", off(off));
                        if (off != states.get(at)) {
                            states.subList(at + 1, states.size()).clear();
                            states.add(off);
                            at++;
                        }
                    }
                }
                assertThat(history.job().plan().numberOff()).isEqualTo(states.get(at));
                assertThat(history.undoStep().isPresent()).isEqualTo(at > 0);
                assertThat(history.redoStep().isPresent()).isEqualTo(at < states.size() - 1);
            }
        });
    }

    private static Job off(int parts) {
        Size size = Size.of(new Typed<>("40 mm", new Length(40)));
        JobPlan plan = new JobPlan(
                new Title("Bearing block", "T-014", "A"),
                UnitSystem.METRIC,
                parts,
                "mild-steel",
                new Block(size, size, size, Map.of()),
                new MachineAsItStands("knee-mill", List.of(), null),
                List.of(),
                List.of(),
                List.of());
        return new Job(plan, JobRecord.EMPTY);
    }
}
