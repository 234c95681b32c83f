package setwright.window.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NudgeTest {
    @Test
    void a_value_goes_on_by_whole_steps_of_its_unit() {
        assertThat(Nudge.text("84 mm", 1)).isEqualTo("85 mm");
        assertThat(Nudge.text("84.3 mm", -1)).isEqualTo("84 mm");
        assertThat(Nudge.text("84.3 mm", 1)).isEqualTo("85 mm");
        assertThat(Nudge.text("0.5 mm", 1)).isEqualTo("0.6 mm");
        assertThat(Nudge.text("662 rev/min", 2)).isEqualTo("670 rev/min");
        assertThat(Nudge.text("1.18 in", 1)).isEqualTo("1.2 in");
    }

    @Test
    void what_would_come_to_nothing_or_is_no_plain_number_stays() {
        assertThat(Nudge.text("0.1 mm", -1)).isEqualTo("0.1 mm");
        assertThat(Nudge.text("1-1/2 in", 1)).isEqualTo("1-1/2 in");
        assertThat(Nudge.text("", 1)).isEmpty();
    }
}
