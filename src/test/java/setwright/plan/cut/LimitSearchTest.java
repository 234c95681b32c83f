package setwright.plan.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.cutting.LimitName;

/** Limits that are powers of a choice: the crossing is known. */
class LimitSearchTest {
    @Test
    void the_largest_choice_is_where_the_first_of_the_growing_limits_is_met() {
        Rounds.each(83, (random, round) -> {
            double power = 0.5 + random.nextDouble();
            double force = 0.5 + random.nextDouble();
            double atPower = 1 + 30 * random.nextDouble();
            double atForce = 1 + 30 * random.nextDouble();
            double share = 0.5 + random.nextDouble() / 2;
            LimitSearch search = new LimitSearch(
                    choice -> Map.of(
                            LimitName.SPINDLE_POWER, Math.pow(choice / atPower, power),
                            LimitName.TOOL_BREAKAGE, Math.pow(choice / atForce, force),
                            LimitName.CUTTING_EDGE, 1.7),
                    share);
            double first = Math.min(atPower * Math.pow(share, 1 / power), atForce * Math.pow(share, 1 / force));
            LimitSearch.Found found = search.upTo(40);
            assertThat(found.value()).isCloseTo(Math.min(40, first), within(5e-4 * first));
        });
    }

    @Test
    void where_all_limits_are_kept_nothing_stops_the_largest_choice() {
        LimitSearch.Found found = new LimitSearch(choice -> Map.of(LimitName.BELT, choice / 100), 1).upTo(50);
        assertThat(found.value()).isEqualTo(50);
        assertThat(found.stoppedBy()).isNull();
    }

    @Test
    void a_limit_that_the_choice_does_not_touch_stops_nothing() {
        LimitSearch.Found found = new LimitSearch(choice -> Map.of(LimitName.OVERSPEED, 3.0), 1).upTo(5);
        assertThat(found.value()).isEqualTo(5);
    }

    @Test
    void a_limit_that_is_over_everywhere_leaves_the_smallest_choice() {
        LimitSearch.Found found = new LimitSearch(choice -> Map.of(LimitName.SHANK_GRIP, 10 + choice), 1).upTo(64);
        assertThat(found.value()).isEqualTo(1);
        assertThat(found.stoppedBy()).isEqualTo(LimitName.SHANK_GRIP);
    }
}
