package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.cutting.Selector.Chosen;
import setwright.cutting.Selector.Wanted;

class SelectorTest {
    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final Selector PULLEY = Selector.steps(List.of(660.0, 80.0, 135.0, 210.0, 325.0, 1115.0));

    @Test
    void the_nearest_step_in_ratio_is_taken() {
        assertThat(PULLEY.choose(hss(300)).value()).isEqualTo(325);
        assertThat(PULLEY.choose(hss(220)).value()).isEqualTo(210);
    }

    @Test
    void a_step_above_by_more_than_the_tool_bears_is_left_for_the_one_below() {
        // 660 is nearer to 500 than 325 is, but 1.32 times as fast.
        assertThat(PULLEY.choose(hss(500))).isEqualTo(new Chosen(325, 0.65, true));
        assertThat(PULLEY.choose(new Wanted(500, Wanted.CARBIDE_MOST_OVER, NONE))
                        .value())
                .isEqualTo(660);
    }

    @Test
    void where_every_step_is_too_fast_the_lowest_is_taken_and_said_to_be_too_fast() {
        assertThat(PULLEY.choose(hss(50))).isEqualTo(new Chosen(80, 1.6, false));
    }

    @Test
    void a_ceiling_is_never_passed_by_a_step() {
        assertThat(PULLEY.choose(new Wanted(640, 1.25, 500)).value()).isEqualTo(325);
        assertThat(PULLEY.choose(new Wanted(640, 1.25, 70)).within()).isFalse();
    }

    @Test
    void a_variable_drive_gives_what_is_wanted_as_far_as_it_goes() {
        Selector drive = Selector.stepless(60, 4200);

        assertThat(drive.choose(hss(777))).isEqualTo(new Chosen(777, 1, true));
        assertThat(drive.choose(hss(9000)).value()).isEqualTo(4200);
        assertThat(drive.choose(hss(30))).isEqualTo(new Chosen(60, 2, false));
        assertThat(drive.choose(new Wanted(777, 1.25, 500)).value()).isEqualTo(500);
    }

    @Test
    void a_hand_has_no_range() {
        assertThat(Selector.byHand().choose(new Wanted(0.01, 1, NONE))).isEqualTo(new Chosen(0.01, 1, true));
    }

    @Test
    void no_other_step_that_is_allowed_lies_nearer() {
        Rounds.each(61, (random, round) -> {
            List<Double> steps =
                    random.doubles(1 + random.nextInt(9), 30, 3000).boxed().toList();
            Wanted wanted = hss(random.nextDouble(20, 4000));

            Chosen chosen = Selector.steps(steps).choose(wanted);

            assertThat(steps).contains(chosen.value());
            assertThat(steps)
                    .filteredOn(step -> step <= 1.25 * wanted.value())
                    .allSatisfy(step -> assertThat(Math.abs(Math.log(step / wanted.value())))
                            .isGreaterThanOrEqualTo(Math.abs(Math.log(chosen.ofWanted())) - 1e-9));
            assertThat(chosen.within()).isEqualTo(chosen.ofWanted() <= 1.25 * (1 + 1e-9));
        });
    }

    @Test
    void no_steps_are_refused() {
        assertThatThrownBy(() -> Selector.steps(List.of()))
                .hasMessage("Steps are at least one setting above 0, not [].");
    }

    private static Wanted hss(double speed) {
        return new Wanted(speed, Wanted.HSS_MOST_OVER, NONE);
    }
}
