package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.quantity.Given;
import setwright.quantity.Trust;
import setwright.quantity.Unit;

class GripAskedTest {
    @Test
    void a_6_in_vise_is_asked_5_15_and_25_kN_and_a_4_in_vise_half_of_it() {
        assertThat(GripAsked.SNUG.usual(152.4)).isEqualTo(5000);
        assertThat(GripAsked.FIRM.usual(152.4)).isEqualTo(15000);
        assertThat(GripAsked.HARD.usual(152.4)).isEqualTo(25000);
        assertThat(GripAsked.FIRM.usual(101.6)).isEqualTo(7500);
    }

    @Test
    void a_wider_vise_is_asked_no_more_and_a_narrower_one_less() {
        assertThat(GripAsked.HARD.usual(203.2)).isEqualTo(25000);
        assertThat(GripAsked.HARD.usual(127)).isCloseTo(18750, within(1e-6));
        assertThat(GripAsked.HARD.usual(50.8)).isCloseTo(6250, within(1e-6));
    }

    @Test
    void a_bad_day_leaves_four_fifths_and_the_working_says_so() {
        var worked = GripAsked.FIRM.worked(Given.of("jaw width", 152.4, Unit.MM, "shop/vise-6"), Outlook.PESSIMISTIC);

        assertThat(worked.printed()).isCloseTo(12, within(1e-9));
        assertThat(worked.deciding()).isEqualTo("firm, pessimistic");
        assertThat(worked.rule().source().trust()).isEqualTo(Trust.COMMON_PRACTICE);
    }

    @Test
    void a_jaw_of_no_width_is_refused() {
        assertThatThrownBy(() -> GripAsked.FIRM.usual(0)).hasMessageContaining("0.0 mm");
    }
}
