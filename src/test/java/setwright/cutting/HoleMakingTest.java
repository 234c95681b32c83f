package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.cutting.TrialCuts.Kind;
import setwright.cutting.TrialCuts.TrialCut;
import setwright.rigidity.TwistedRod;
import setwright.shop.ToolMaterial;

/** Pecks, gentle feeds, trial cuts and what thin tools bear. */
class HoleMakingTest {
    @Test
    void a_spot_of_ninety_degrees_opens_twice_its_depth() {
        assertThat(ConeCut.opened(3, Math.PI / 2)).isCloseTo(6, within(1e-9));
    }

    @Test
    void a_hole_of_three_diameters_is_drilled_in_one_go_and_a_deep_one_in_pecks() {
        assertThat(PeckPlan.depths(10, 30)).containsExactly(30.0);
        assertThat(PeckPlan.depths(10, 72)).containsExactly(30.0, 50.0, 60.0, 72.0);
    }

    @Test
    void pecks_go_ever_deeper_and_end_at_the_whole_depth() {
        Rounds.each(41, (random, round) -> {
            double diameter = random.nextDouble(1, 20);
            double whole = random.nextDouble(0.2, 15) * diameter;
            var depths = PeckPlan.depths(diameter, whole);
            assertThat(depths).isSorted().doesNotHaveDuplicates();
            assertThat(depths.get(depths.size() - 1)).isEqualTo(whole);
        });
    }

    @Test
    void half_the_feed_takes_as_long_again() {
        assertThat(EasedFeed.breakingThrough(20, 24, 0.2).orElseThrow().longerBy())
                .isCloseTo(4, within(1e-9));
        assertThat(EasedFeed.breakingThrough(20, 18, 0.2)).isEmpty();
    }

    /** From 18 to 20 with 0.25 on the radius left: rough to 19.5, half of the rest to 19.75, to size, and once more. */
    @Test
    void a_bore_comes_to_size_by_halves() {
        var cuts = TrialCuts.of(new TrialCuts.Wanted(18, 20, 1, 0.25, true));

        assertThat(cuts).extracting(TrialCut::kind).containsExactly(Kind.ROUGH, Kind.HALF, Kind.LAST, Kind.SPRING);
        assertThat(cuts).extracting(TrialCut::to).containsExactly(19.5, 19.75, 20.0, 20.0);
    }

    /** From memory of tap-makers' tables: about 1, 7.5 and 18 N·m for M3, M6 and M8. */
    @Test
    void taps_twist_off_about_where_they_are_remembered_to() {
        double strength = TwistedRod.strength(ToolMaterial.HSS).expected();

        assertThat(TwistedRod.twistsOff(strength, TwistedRod.TAP * 3)).isCloseTo(1000, withinPercentage(15));
        assertThat(TwistedRod.twistsOff(strength, TwistedRod.TAP * 6)).isCloseTo(7500, withinPercentage(15));
        assertThat(TwistedRod.twistsOff(strength, TwistedRod.TAP * 8)).isCloseTo(18000, withinPercentage(15));
    }
}
