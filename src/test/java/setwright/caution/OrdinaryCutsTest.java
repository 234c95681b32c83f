package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.plan.BearingBlock;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.plan.cut.OperationCut;
import setwright.shop.Shop;

/** Five cuts that every machinist takes without thought: none of them gives more than a note. */
class OrdinaryCutsTest {
    private static final Shop SHOP = BearingBlock.shop();

    private static Plan plan(String job) {
        Path file = Path.of("demo-jobs/everyday", job + ".setwright.json");
        return Planner.plan(BearingBlock.job(file, SHOP), SHOP);
    }

    private static OperationCut cut(String job, String operation) {
        return plan(job).cut().operation(operation).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"gib-slot", "finished-wall", "lever-drilled-plate", "hand-tapped-plate", "faced-bar"})
    void an_ordinary_cut_gives_no_more_than_a_note(String job) {
        Findings findings = Judge.judge(plan(job));
        assertThat(findings.open(Severity.STOP)).isEmpty();
        assertThat(findings.open(Severity.CAUTION)).isEmpty();
        assertThat(findings.notChecked()).isEmpty();
    }

    @Test
    void the_slot_is_cut_at_size_six_deep_at_three_hundredths_a_tooth() {
        OperationCut slot = cut("gib-slot", "o1");
        assertThat(slot.width()).isEqualTo(12);
        assertThat(slot.depth()).isEqualTo(6);
        assertThat(slot.feedPerEdge().inside()).isCloseTo(0.03, within(1e-4));
        assertThat(slot.passes()).isEqualTo(1);
    }

    @Test
    void the_wall_is_finished_a_quarter_of_a_millimetre_wide_after_a_smaller_cutter() {
        OperationCut wall = cut("finished-wall", "o2");
        assertThat(wall.width()).isEqualTo(0.25);
        assertThat(wall.depth()).isEqualTo(10);
    }

    @Test
    void the_hole_is_drilled_by_the_lever_at_fifteen_hundredths_a_turn() {
        assertThat(cut("lever-drilled-plate", "o2").feedPerEdge().inside()).isCloseTo(0.15, within(1e-9));
    }

    @Test
    void the_face_is_cut_one_and_a_half_deep_and_forty_wide_at_a_tenth_a_tooth() {
        OperationCut face = cut("faced-bar", "o1");
        assertThat(face.width()).isEqualTo(40);
        assertThat(face.depth()).isEqualTo(1.5);
        assertThat(face.feedPerEdge().inside()).isCloseTo(0.1, within(1e-9));
    }
}
