package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.job.HoldingEdits;
import setwright.job.StrapField;

/** Two straps over a plate, 96 from pad to heel: 2 degrees are 3.35 mm. */
class StrapChecksTest {
    @Test
    void a_heel_may_be_two_degrees_high_and_a_little_more_is_a_note() {
        assertThat(StrapCases.mm(StrapField.HEEL_OVER, 3.3).note("heel-low")).isEmpty();
        assertThat(StrapCases.mm(StrapField.HEEL_OVER, 3.4).note("heel-low")).isPresent();
    }

    @Test
    void a_heel_more_than_two_degrees_low_is_not_run() {
        assertThat(StrapCases.mm(StrapField.HEEL_OVER, -3.3).found("heel-low"))
                .singleElement()
                .extracting(Caution::severity)
                .isEqualTo(Severity.CAUTION);
        assertThat(StrapCases.mm(StrapField.HEEL_OVER, -3.4).found("heel-low"))
                .singleElement()
                .extracting(Caution::severity)
                .isEqualTo(Severity.STOP);
    }

    /** 250 N on 14 x 12 mm are 42 N·m. */
    @Test
    void three_times_the_torque_of_a_hand_is_not_run() {
        assertThat(StrapCases.torque("125 N·m").found("slot-overloaded"))
                .singleElement()
                .extracting(Caution::severity)
                .isEqualTo(Severity.CAUTION);
        assertThat(StrapCases.torque("126.1 N·m").found("slot-overloaded"))
                .singleElement()
                .extracting(Caution::severity)
                .isEqualTo(Severity.STOP);
    }

    /** The top of the strap is 26 + 16 over the table, and 18 of the stud are in the T-nut: 68 leaves 8 of M12. */
    @Test
    void less_than_three_quarters_of_a_diameter_in_the_nut_is_not_run() {
        assertThat(StrapCases.holeBeside(50).in(StrapCases.shop("68 mm")).found("stud-too-short"))
                .singleElement()
                .satisfies(caution -> {
                    assertThat(caution.severity()).isEqualTo(Severity.STOP);
                    assertThat(caution.figure().value()).isEqualTo(8);
                });
    }

    @Test
    void a_strap_on_the_cut_is_not_said_twice() {
        assertThat(StrapCases.holeBeside(15).found("clamp-on-the-cut")).hasSize(1);
        assertThat(StrapCases.holeBeside(15).found("cutter-meets-clamp")).isEmpty();
    }

    @Test
    void a_strap_that_is_taken_off_is_looked_at_no_more() {
        Bench low = StrapCases.mm(StrapField.HEEL_OVER, -2);
        Bench off =
                low.with(job -> HoldingEdits.deleteStrap(low.plan().drawnUp(), new HoldingEdits.StrapAt("s1", "left")));

        assertThat(low.found("heel-low")).hasSize(1);
        assertThat(off.found("heel-low")).isEmpty();
        assertThat(HoldingEdits.straps(off.plan().drawnUp().setUps().get(0).holding()))
                .hasSize(1);
    }

    @Test
    void a_strap_more_is_laid_in_pencil() {
        Bench two = StrapCases.holeBeside(50);
        Bench three = two.with(job -> HoldingEdits.addStrap(two.plan().drawnUp(), "s1"));

        assertThat(HoldingEdits.straps(three.plan().drawnUp().setUps().get(0).holding()))
                .hasSize(3)
                .last()
                .matches(strap -> strap.id().equals("strap3") && strap.u().pencilled());
    }
}
