package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.caution.check.DrillMeets;
import setwright.job.OperationField;
import setwright.job.ViseField;
import setwright.job.ViseHolding;

class DrillMeetsParallelTest {
    private static final String SLUG = "drill-meets-parallel";

    /** Jaw at 26 from the middle, inset 2, 6.35 thick: to 17.65; the M8 tap at 15 reaches 19. */
    @Test
    void it_says_how_deep_the_widest_tool_goes_in() {
        Caution caution = Cases.thickParallels(2).found(SLUG).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.figure().value()).isCloseTo(-(19 - 17.65), within(1e-9));
        assertThat(caution.operation()).isEqualTo("h2-tap");
        assertThat(caution.message()).contains("1.35 mm into the front parallel", "(s1/h2-tap)");
    }

    /** Flush parallels end at 19.65, the tap at 19; 0.3 inward leaves 0.35. */
    @Test
    void too_near_is_a_caution_and_enough_is_silent() {
        assertThat(Cases.thickParallels(0).found(SLUG)).isEmpty();
        Caution caution = Cases.thickParallels(0.3).found(SLUG).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.CAUTION);
        assertThat(caution.figure().value()).isCloseTo(0.35, within(1e-9));
        assertThat(caution.message()).contains("passes 0.35 mm from");
    }

    @Test
    void drill_and_tap_over_the_same_parallels_are_one_caution() {
        assertThat(Cases.thickParallels(2).found(SLUG)).hasSize(1);
        assertThat(Cases.thickParallels(2).found(SLUG).get(0).message()).contains("One more tool");
    }

    @Test
    void a_blind_hole_meets_no_parallel() {
        Bench blind = Bench.of(SmallJobs.blindBlock())
                .ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .mm(ViseField.PARALLEL_HEIGHT, 19.05)
                .mm(ViseField.PARALLEL_INSET, 2);

        assertThat(blind.found(SLUG)).isEmpty();
    }

    @Test
    void on_the_vise_bed_there_is_no_parallel_to_meet() {
        Bench onBed = Cases.block().ink(ViseField.PARALLELS, ViseHolding.NONE);

        assertThat(onBed.found(SLUG)).isEmpty();
        assertThat(DrillMeets.parallel().look(onBed.plan())).isEmpty();
    }

    @Test
    void its_identity_stays_when_its_figure_changes() {
        Caution deep = Cases.thickParallels(2).found(SLUG).get(0);
        Caution near = Cases.thickParallels(0.3).found(SLUG).get(0);

        assertThat(near.figure()).isNotEqualTo(deep.figure());
        assertThat(near.identity()).isEqualTo(deep.identity()).isEqualTo("drill-meets-parallel/s1//parallels");
    }

    @Test
    void its_identity_stays_when_another_tool_comes_to_be_the_worst() {
        Caution tap = Cases.thickParallels(2).found(SLUG).get(0);
        Caution drill = Cases.thickParallels(2)
                .ink("h2-tap", OperationField.CUTTER, "tap-hss-m6-spiral-point")
                .found(SLUG)
                .get(0);

        assertThat(drill.operation()).isEqualTo("h2-drill");
        assertThat(drill.identity()).isEqualTo(tap.identity());
    }

    @Test
    void a_caution_that_only_moves_to_another_tool_is_not_cleared() {
        Bench bench = Cases.thickParallels(2);

        assertThat(bench.remedies(bench.found(SLUG).get(0)))
                .isNotEmpty()
                .allSatisfy(
                        remedy -> assertThat(bench.with(job -> remedy.changed()).found(SLUG))
                                .isEmpty());
    }
}
