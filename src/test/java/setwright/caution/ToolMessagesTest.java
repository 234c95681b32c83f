package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.quantity.Unit;

/** Figures of the tool checks, worked by hand from the sizes of the small shop. */
class ToolMessagesTest {
    private static Caution only(Bench bench, String slug) {
        return bench.found(slug).get(0);
    }

    /** 104 over all less 75 out; 1.5 times 20 asked. */
    @Test
    void what_does_not_stand_out_is_in_the_collet() {
        assertThat(only(ToolCases.endMillOut(75), "short-grip").figure()).isEqualTo(Figure.atLeast(30, 29, Unit.MM));
    }

    @Test
    void flutes_in_the_collet_are_said_by_how_far_they_are_in() {
        Caution caution = only(ToolCases.endMillOut(30), "short-grip");

        assertThat(caution.figure()).isEqualTo(Figure.atLeast(38, 30, Unit.MM));
        assertThat(caution.message()).contains("grips 8 mm of the flutes", "more stick-out");
    }

    @Test
    void a_flat_under_a_set_screw_is_neither_pulled_out_nor_slips() {
        Bench flat = ToolCases.lanes(15, 20, 150).ink("f1-face", OperationField.HOLDER, SmallHolders.END_MILL_HOLDER);

        assertThat(flat.found("pulls-out-of-holder")).isEmpty();
        assertThat(flat.found("slips-in-holder")).isEmpty();
    }

    @Test
    void a_usual_limit_that_nobody_confirmed_is_a_caution_one_of_the_row_is_a_stop() {
        assertThat(only(ToolCases.spotAt(3100), "too-fast-for-the-tool").severity())
                .isEqualTo(Severity.CAUTION);
        assertThat(only(ToolCases.chuckMarked("2500 rev/min", 2720), "too-fast-for-the-tool")
                        .severity())
                .isEqualTo(Severity.STOP);
        assertThat(ToolCases.chuckMarked("4000 rev/min", 3100).found("too-fast-for-the-tool"))
                .isEmpty();
    }

    @Test
    void a_hole_that_is_there_leaves_a_cutter_without_centre_nothing_to_stand_on() {
        assertThat(only(ToolCases.plunged(false), "cannot-plunge").severity()).isEqualTo(Severity.STOP);
        assertThat(Cases.block()
                        .ink("h1-ream", OperationField.CUTTER, SmallCutters.CARBIDE_END_MILL)
                        .found("cannot-plunge"))
                .isEmpty();
    }

    /** 100 m/min on 63 mm: 1000 x 100 / (π 63) = 505 rev/min, and 1.5 times of it for carbide. */
    @Test
    void a_carbide_edge_bears_half_as_much_speed_again() {
        Figure figure =
                only(ToolCases.atSpeed("f1-face", 800), "speed-out-of-range").figure();

        assertThat(Unit.RPM.fromInside(figure.limit())).isCloseTo(1.5 * 100_000 / (Math.PI * 63), within(1e-6));
        assertThat(ToolCases.atSpeed("f1-face", 200).note("speed-out-of-range")).isPresent();
        assertThat(ToolCases.atSpeed("f1-face", 210).note("speed-out-of-range")).isEmpty();
    }

    /** Two hp at 0.75: 745.7 x 2 x 0.75; a quarter more is a stop. */
    @Test
    void the_power_at_the_cutter_is_that_of_the_motor_less_what_gets_lost() {
        Caution over = only(ToolCases.lanes(15, 14, 150), "spindle-overloaded");

        assertThat(over.figure().limit()).isCloseTo(2 * 745.69987 * 0.75, within(1e-3));
        assertThat(over.severity()).isEqualTo(Severity.CAUTION);
        assertThat(only(ToolCases.lanes(15, 18, 150), "spindle-overloaded").severity())
                .isEqualTo(Severity.STOP);
    }

    @Test
    void what_overloads_the_spindle_is_not_said_of_the_belt_too() {
        assertThat(ToolCases.lanes(15, 30, 150).found("belt-slips")).isEmpty();
        assertThat(ToolCases.lanes(15, 30, 150).found("spindle-overloaded")).hasSize(1);
    }

    /** 10 of 20 wide is the full chip: 150 / (325 x 4) = 0.115. A tenth of a millimetre wide thins it to a seventh. */
    @Test
    void a_narrow_cut_thins_its_chip() {
        assertThat(only(ToolCases.lanes(10, 3, 150), "feed-out-of-range")
                        .figure()
                        .value())
                .isCloseTo(150.0 / (325 * 4), within(1e-9));

        double share = 2 * Math.sqrt(0.1 / 20 * (1 - 0.1 / 20));
        Figure thin = only(ToolCases.lanes(0.1, 3, 40), "feed-out-of-range").figure();
        assertThat(thin).isEqualTo(Figure.atLeast(0.005, thin.value(), Unit.MM));
        assertThat(thin.value()).isCloseTo(share * 40 / (325 * 4), within(1e-9));
    }

    @Test
    void a_large_drill_by_the_lever_is_a_note_until_half_its_feed_is_too_much() {
        assertThat(ToolCases.drilled("13").note("push-too-heavy")).isPresent();
        assertThat(ToolCases.drilled("10").note("push-too-heavy")).isEmpty();
        assertThat(only(ToolCases.drilled("16"), "push-too-heavy").figure().limit())
                .isEqualTo(3000);
    }

    @Test
    void a_pilot_through_the_web_takes_more_than_half_of_the_push() {
        Bench heavy = ToolCases.drilled("16");
        Remedy pilot = heavy.remedies(only(heavy, "push-too-heavy")).stream()
                .filter(remedy -> remedy.text().startsWith("Drill a pilot"))
                .findFirst()
                .orElseThrow();
        Bench piloted = heavy.with(job -> pilot.changed());

        double solid = thrust(heavy);
        assertThat(thrust(piloted)).isBetween(0.3 * solid, 0.5 * solid);
    }

    private static double thrust(Bench bench) {
        return bench.plan().cut().operation("h1-drill").orElseThrow().thrust().inside();
    }

    @Test
    void the_power_feed_carries_what_its_machine_says() {
        assertThat(only(ToolCases.quillFeeds("h1-drill"), "quill-feed-overloaded")
                        .figure())
                .isEqualTo(Figure.atMost(9.525, 11.8, Unit.MM));
    }

    @Test
    void the_same_cut_conventional_or_as_a_slot_does_not_pull_the_table() {
        Bench climbing = ToolCases.climbing(4, 12);

        assertThat(climbing.ink("f1-face", OperationField.DIRECTION, Operation.Direction.CONVENTIONAL)
                        .found("climb-pulls-table"))
                .isEmpty();
        assertThat(climbing.mm("f1-face", OperationField.WIDTH, 20).found("climb-pulls-table"))
                .isEmpty();
        assertThat(ToolCases.climbing(4, 8).note("climb-pulls-table")).isPresent();
    }

    @Test
    void a_roughing_pass_of_a_slender_tool_is_said_sooner() {
        assertThat(ToolCases.slender(100).found("chatter-likely")).isEmpty();
        assertThat(ToolCases.slender(100).note("chatter-likely")).isPresent();
        assertThat(ToolCases.slender(100)
                        .mm("f1-face", OperationField.DEPTH, 11)
                        .found("chatter-likely"))
                .hasSize(1);
        assertThat(ToolCases.slender(80).note("chatter-likely")).isEmpty();
    }

    @Test
    void the_quill_is_out_by_what_the_knee_stands_too_low() {
        assertThat(only(ToolCases.quillOut(61), "quill-far-out").figure().value())
                .isCloseTo(61, within(1e-9));
        assertThat(ToolCases.quillOut(26).note("quill-far-out")).isPresent();
        assertThat(ToolCases.quillOut(24).note("quill-far-out")).isEmpty();
    }

    /** For 12 mm the chart says 0.010 to 0.016 in. */
    @Test
    void half_off_the_chart_is_said_of_the_reamer() {
        assertThat(only(ToolCases.reamedAfter("11.3"), "ream-allowance")
                        .figure()
                        .limit())
                .isCloseTo(1.5 * 0.016 * 25.4, within(1e-9));
        assertThat(only(ToolCases.reamedAfter("11.9"), "ream-allowance")
                        .figure()
                        .limit())
                .isCloseTo(0.5 * 0.010 * 25.4, within(1e-9));
    }
}
