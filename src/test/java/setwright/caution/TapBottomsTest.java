package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.job.OperationField;
import setwright.quantity.Unit;

class TapBottomsTest {
    private static final String SLUG = "tap-bottoms";

    /** 12 mm of M8 x 1.25 by four threads of lead: 12 + 5 x 1.25 + 8 for the chips = 26.25. */
    @Test
    void lead_over_run_and_chips_come_on_top_of_the_thread() {
        Caution caution = Cases.drilledTo(26).found(SLUG).get(0);

        assertThat(caution.figure()).isEqualTo(Figure.atLeast(12 + 5 * 1.25 + 8, 26, Unit.MM));
        assertThat(caution.subject()).isEqualTo("h2");
    }

    @Test
    void just_deep_enough_is_silent() {
        assertThat(Cases.drilledTo(26.25).found(SLUG)).isEmpty();
        assertThat(Cases.drilledTo(26.24).found(SLUG)).hasSize(1);
    }

    @Test
    void under_power_it_is_not_run_by_hand_it_is_a_caution() {
        assertThat(Cases.drilledTo(26).found(SLUG).get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(Cases.underPower(Cases.drilledTo(26)).found(SLUG).get(0).severity())
                .isEqualTo(Severity.STOP);
    }

    /** 12 + 4 x 1.25 and no chips below: 17. */
    @Test
    void a_spiral_flute_lifts_its_chips_out() {
        Bench spiral = Cases.drilledTo(17).ink("h2-tap", OperationField.CUTTER, SmallCutters.SPIRAL_FLUTE);

        assertThat(spiral.found(SLUG)).isEmpty();
        assertThat(spiral.mm("h2-drill", OperationField.DEPTH, 16.9).found(SLUG))
                .hasSize(1);
    }

    @Test
    void a_hole_that_goes_through_has_no_bottom() {
        assertThat(Cases.block().found(SLUG)).isEmpty();
    }

    @Test
    void deeper_by_what_is_missing_or_a_tap_that_needs_less_is_offered() {
        Bench bench = Cases.drilledTo(20);

        assertThat(bench.remedies(bench.found(SLUG).get(0)))
                .extracting(Remedy::text)
                .containsExactly(
                        "Drill 26.5 mm deep at full diameter (now 20.0 mm, inked).", "Take the Tap M8, spiral flutes.");
    }
}
