package setwright.location.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.Rounds;

class AngleStackTest {
    private static final List<Long> TWELVE = sizes(0.25, 0.5, 1, 2, 3, 4, 5, 10, 15, 20, 25, 30);

    /** The set of 13 of the National Physical Laboratory; a data handbook prints 3" 9" 27" for its seconds, which cannot reach 81°40'57". */
    private static final List<Long> NPL = sizes(
            1, 3, 9, 27, 41, 1 / 60.0, 3 / 60.0, 9 / 60.0, 27 / 60.0, 3 / 3600.0, 6 / 3600.0, 18 / 3600.0, 30 / 3600.0);

    private static List<Long> sizes(double... degrees) {
        return Arrays.stream(degrees).mapToObj(AngleStack::ofDegrees).toList();
    }

    @ParameterizedTest
    @CsvSource({"14, 24, 18, 5", "32, 15, 33, 7", "57, 34, 9, 8", "22, 30, 0, 5"})
    void the_thirteen_gauges_need_as_few_pieces_as_an_exhaustive_search_says(
            int degrees, int minutes, int seconds, int pieces) {
        AngleStack stack =
                AngleStack.nearest(AngleStack.ofDegrees(degrees + minutes / 60.0 + seconds / 3600.0), NPL, true);
        assertThat(stack.error()).isZero();
        assertThat(stack.blocks()).hasSize(pieces);
    }

    @Test
    void the_thirteen_gauges_reach_81_degrees_40_minutes_57_seconds_and_no_more() {
        assertThat(NPL.stream().mapToLong(Long::longValue).sum())
                .isEqualTo(AngleStack.ofDegrees(81 + 40 / 60.0 + 57 / 3600.0));
    }

    @ParameterizedTest
    @CsvSource({"7, 2", "22.5, 3", "33, 2", "37.75, 5", "59.25, 4", "90, 4"})
    void shop_blocks_that_are_only_added_need_as_few_as_worked_by_hand(double degrees, int pieces) {
        AngleStack stack = AngleStack.nearest(AngleStack.ofDegrees(degrees), TWELVE, false);
        assertThat(stack.error()).isZero();
        assertThat(stack.blocks()).hasSize(pieces).allMatch(block -> block.sign() == 1);
        assertThat(AngleStack.nearest(AngleStack.ofDegrees(degrees), TWELVE, true)
                        .blocks())
                .hasSizeLessThanOrEqualTo(pieces);
    }

    /** Against every choice of a small set, one by one. */
    @Test
    void no_choice_of_blocks_comes_nearer_or_with_fewer() {
        Rounds.each(72, (random, round) -> {
            List<Long> set = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                set.add(AngleStack.ofDegrees(random.nextInt(1, 80) / 4.0));
            }
            long wanted = AngleStack.ofDegrees(random.nextInt(1, 160) / 8.0);
            AngleStack stack = AngleStack.nearest(wanted, set, true);
            for (int choice = 0; choice < 729; choice++) {
                long sum = 0;
                int pieces = 0;
                for (int i = 0, left = choice; i < 6; i++, left /= 3) {
                    sum += (left % 3 - 1) * set.get(i);
                    pieces += left % 3 == 1 ? 0 : 1;
                }
                long error = Math.abs(sum - wanted);
                assertThat(error).isGreaterThanOrEqualTo(Math.abs(stack.error()));
                if (error == Math.abs(stack.error())) {
                    assertThat(pieces).isGreaterThanOrEqualTo(stack.blocks().size());
                }
            }
        });
    }

    /** Machinery's Handbook 31st ed. p.121 figures 4, 5 and 6; the numbers follow from its formulas. */
    @Test
    void compound_angles_come_out_as_the_handbook_has_them() {
        near(CompoundAngle.plate(Math.toRadians(20), Math.toRadians(30)), 57.7721, 34.3136);
        near(CompoundAngle.corner(Math.toRadians(20), Math.toRadians(30)), 32.2279, 17.1133);
        near(CompoundAngle.hole(Math.toRadians(10), Math.toRadians(15)), 33.3474, 17.7842);
        near(CompoundAngle.plate(0, Math.toRadians(30)), 90, 30);
    }

    private static void near(CompoundAngle found, double turn, double tilt) {
        assertThat(Math.toDegrees(found.turn())).isCloseTo(turn, within(0.0005));
        assertThat(Math.toDegrees(found.tilt())).isCloseTo(tilt, within(0.0005));
    }

    @Test
    void four_teeth_cannot_be_milled_on_an_end() {
        assertThatThrownBy(() -> EndTeeth.elevation(4, Math.toRadians(60))).hasMessageContaining("cannot be milled");
    }

    /** computed: own derivation, 0.0001 in of a 5 in bar is 4.76 seconds at 30 degrees and 8.25 at 60. */
    @Test
    void an_error_of_the_stack_tilts_a_steep_sine_bar_more() {
        assertThat(3600 * Math.toDegrees(SineBar.sensitivity(0.0001, 5, Math.PI / 6)))
                .isCloseTo(4.76, within(0.05));
        assertThat(3600 * Math.toDegrees(SineBar.sensitivity(0.0001, 5, Math.PI / 3)))
                .isCloseTo(8.25, within(0.08));
    }
}
