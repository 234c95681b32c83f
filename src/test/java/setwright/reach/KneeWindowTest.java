package setwright.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.reach.KneeWindow.Bound;

class KneeWindowTest {
    /** Nose 0 to 18.5 in over the table, quill 5 in. */
    private static final NoseRange KNEE_MILL = new NoseRange(0, 469.9, 127);

    /** Drill 185 below the nose, part top 143, 10 to cross, 30 deep: 153 + 185 to 113 + 185 + 127. */
    @Test
    void a_drilled_hole_has_a_window_between_crossing_height_and_stroke() {
        var window = KneeWindow.of(HeightsOfUse.byQuill("drill", 185, 153, 113), KNEE_MILL);

        assertThat(window.isOpen()).isTrue();
        assertThat(window.low()).isEqualTo(338);
        assertThat(window.high()).isEqualTo(425);
        assertThat(window.missing()).isZero();
    }

    /** The end mill 60 below the nose at 143: the knee has one place at full depth, as far as the quill stays in. */
    @Test
    void a_milled_face_has_one_height_with_the_quill_in() {
        var window = KneeWindow.of(HeightsOfUse.byKnee("face", 60, 153, 143), KNEE_MILL);

        assertThat(window.low()).isEqualTo(203).isEqualTo(window.high());
        assertThat(window.isOpen()).isTrue();
    }

    @Test
    void a_quill_that_may_come_out_widens_the_window_of_a_milled_face() {
        var use = new HeightsOfUse("face", 60, 153, 143, HeightsOfUse.Feed.KNEE, 25);

        assertThat(KneeWindow.of(use, KNEE_MILL).high()).isEqualTo(228);
    }

    @Test
    void what_closes_a_window_is_named_with_what_is_missing() {
        var deep = KneeWindow.of(HeightsOfUse.byQuill("bore", 100, 200, 60), KNEE_MILL);
        assertThat(deep.bound()).isEqualTo(Bound.QUILL_STROKE);
        assertThat(deep.missing()).isCloseTo(13, within(1e-9));

        var tall = KneeWindow.of(HeightsOfUse.byQuill("drill", 300, 200, 150), KNEE_MILL);
        assertThat(tall.bound()).isEqualTo(Bound.NOSE_NOT_HIGH_ENOUGH);
        assertThat(tall.missing()).isCloseTo(500 - 469.9, within(1e-9));

        var low = KneeWindow.of(HeightsOfUse.byKnee("face", 0, 20, 10), new NoseRange(63.5, 469.9, 127));
        assertThat(low.bound()).isEqualTo(Bound.NOSE_NOT_LOW_ENOUGH);
        assertThat(low.missing()).isCloseTo(53.5, within(1e-9));
    }

    @Test
    void heights_that_contradict_each_other_are_said() {
        assertThatThrownBy(() -> HeightsOfUse.byQuill("drill", 100, 50, 60)).hasMessageContaining("crossing height");
        assertThatThrownBy(() -> new NoseRange(100, 50, 127)).hasMessageContaining("from lowest to highest");
    }

    /** Independent of the window: at a nose height the quill comes out by nose - projection - point. */
    @Test
    void a_height_lies_in_the_window_just_when_the_quill_reaches_both_ends_of_the_stroke() {
        Rounds.each(21, (random, round) -> {
            double deepest = random.nextDouble(0, 200);
            var use = HeightsOfUse.byQuill(
                    "drill", random.nextDouble(0, 250), deepest + random.nextDouble(0, 160), deepest);
            var machine =
                    new NoseRange(random.nextDouble(0, 60), random.nextDouble(350, 500), random.nextDouble(60, 130));
            var window = KneeWindow.of(use, machine);
            for (int i = 0; i < 20; i++) {
                double nose = random.nextDouble(0, 520);
                double drawnBack = nose - use.projection() - use.crossing();
                double fullyDown = nose - use.projection() - use.deepest();
                boolean reached = machine.lowest() <= nose
                        && nose <= machine.highest()
                        && drawnBack >= 0
                        && fullyDown <= machine.quillStroke();
                assertThat(window.isOpen() && window.holds(nose)).isEqualTo(reached);
            }
        });
    }

    /** The nose has to stand higher by what the tool is longer, and the machine ends where it ends. */
    @Test
    void a_longer_tool_never_widens_a_knee_window() {
        Rounds.each(22, (random, round) -> {
            double deepest = random.nextDouble(0, 200);
            double crossing = deepest + random.nextDouble(0, 120);
            double projection = random.nextDouble(60, 250);
            double longer = projection + random.nextDouble(0, 150);
            var machine = new NoseRange(0, random.nextDouble(300, 500), random.nextDouble(60, 130));

            double width = width(KneeWindow.of(HeightsOfUse.byQuill("drill", projection, crossing, deepest), machine));
            double after = width(KneeWindow.of(HeightsOfUse.byQuill("drill", longer, crossing, deepest), machine));
            assertThat(after).isLessThanOrEqualTo(width + 1e-9);
        });
    }

    private static double width(KneeWindow window) {
        return window.isOpen() ? window.high() - window.low() : 0;
    }
}
