package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.job.DrawnOperation;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.window.model.RankingPage;
import setwright.window.model.Screen;
import setwright.window.state.Selection;

class RankingDeskTest {
    @TempDir
    Path folder;

    private TestDesk test;

    @BeforeEach
    void open() {
        test = new TestDesk(folder);
        test.settled();
    }

    @AfterEach
    void close() {
        test.close();
    }

    private RankingPage ranked() {
        return test.when(screen -> !screen.ranking().items().isEmpty()
                        && screen.ranking().working().isEmpty())
                .ranking();
    }

    @Test
    void it_is_closed_until_it_is_asked_for_and_asking_again_closes_it() {
        assertThat(test.desk().screen().ranking().open()).isFalse();
        test.desk().ranking().open();
        assertThat(test.desk().screen().ranking().open()).isTrue();
        test.desk().ranking().open();
        assertThat(test.desk().screen().ranking()).isEqualTo(RankingPage.CLOSED);
    }

    @Test
    void the_holdings_of_the_set_up_are_ranked_and_taking_one_is_a_step_that_undoes() {
        Job before = test.desk().session().job();
        test.desk().ranking().open();
        RankingPage page = ranked();
        assertThat(page.title()).startsWith("What would hold the work");
        RankingPage.Item second = page.items().stream()
                .filter(item -> item.takes() && item.rank() > 1)
                .findFirst()
                .orElseThrow();

        test.desk().ranking().take(second.rank(), "it is free today");

        assertThat(test.desk().session().job()).isNotEqualTo(before);
        assertThat(test.desk().session().job().plan().because("s1")).isEqualTo("it is free today");
        assertThat(test.desk().screen().undo()).endsWith("taken");
        assertThat(test.desk().screen().ranking().open()).isFalse();
        test.desk().undo();
        assertThat(test.desk().session().job()).isEqualTo(before);
    }

    @Test
    void the_holders_of_the_chosen_operation_are_ranked() {
        DrawnOperation drill =
                test.desk().planned().orElseThrow().plan().drawnUp().setUps().get(0).operations().stream()
                        .filter(one -> one.kind() == Operation.Kind.DRILL)
                        .findFirst()
                        .orElseThrow();
        test.desk().card().choose(drill.id());
        test.desk().ranking().open();
        RankingPage page = ranked();

        assertThat(page.title()).startsWith("What would hold the cutter: Drill");
        RankingPage.Item other = page.items().stream()
                .filter(RankingPage.Item::takes)
                .findFirst()
                .orElseThrow();
        test.desk().ranking().take(other.rank(), "");

        Screen after = test.settled();
        assertThat(after.plan()
                        .orElseThrow()
                        .drawnUp()
                        .setUps()
                        .get(0)
                        .operation(drill.id())
                        .orElseThrow()
                        .holder())
                .satisfies(holder -> assertThat(holder.standing()).isEqualTo(Standing.INKED))
                .satisfies(holder ->
                        assertThat(holder.value()).isNotEqualTo(drill.holder().value()));
    }

    @Test
    void an_edit_while_it_is_open_is_ranked_anew_and_what_is_stale_is_not_taken() {
        test.desk().ranking().open();
        RankingPage page = ranked();
        int rank = page.items().stream()
                .filter(RankingPage.Item::takes)
                .findFirst()
                .orElseThrow()
                .rank();
        test.desk().units();
        Job edited = test.desk().session().job();

        test.desk().ranking().take(rank, "");

        assertThat(test.desk().session().job()).isEqualTo(edited);
        test.settled();
        assertThat(ranked().items()).isNotEmpty();
    }

    @Test
    void squaring_up_is_one_step_that_chooses_its_first_load() {
        Job before = test.desk().session().job();

        test.desk().route().squareUp();

        Screen after = test.settled();
        assertThat(after.undo()).isEqualTo("Blank squared up");
        assertThat(after.at())
                .isEqualTo(new Selection(
                        test.desk().session().job().plan().setUps().get(0).id(), ""));
        assertThat(test.desk().session().job().plan().setUps().get(0).title()).endsWith("round bar");
        test.desk().undo();
        assertThat(test.desk().session().job()).isEqualTo(before);
    }
}
