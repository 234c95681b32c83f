package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HolderMeetsJawTest {
    private static final String SLUG = "holder-meets-jaw";

    /**
     * Part bottom at 73 + 12.7 = 85.7; the 6.8 drill ends its point (3.4 / tan 59 = 2.04) and 1 mm below; the chuck's face is
     * its stick-out above that, the jaw top at 73 + 44 = 117.
     */
    private static double over(double stickOut) {
        double lowest = 85.7 - 3.4 / Math.tan(Math.toRadians(59)) - 1;
        return lowest + stickOut - 117;
    }

    @Test
    void a_chuck_that_comes_below_the_jaw_top_beside_it_is_not_run() {
        Caution caution = Cases.stubDrillOut(34).found(SLUG).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.figure().value()).isCloseTo(over(34), within(1e-6));
        assertThat(caution.message()).startsWith("Keyed drill chuck 13 mm, R8 runs 0.34 mm into the solid jaw");
    }

    @Test
    void less_than_three_millimetres_is_a_caution() {
        Caution caution = Cases.stubDrillOut(36).found(SLUG).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.CAUTION);
        assertThat(caution.figure().value()).isCloseTo(over(36), within(1e-6)).isBetween(0.0, 3.0);
    }

    @Test
    void a_cutter_that_works_beside_the_jaw_with_its_holder_high_above_is_ordinary() {
        assertThat(Cases.stubDrillOut(38).found(SLUG)).isEmpty();
        assertThat(over(38)).isBetween(3.0, 4.0);
    }
}
