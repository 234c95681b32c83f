package setwright.rigidity.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.cutting.Engagement;

class ZeroOrderTest {
    @Test
    void more_damping_never_lowers_the_depth_that_is_quiet_at_every_speed() {
        Rounds.each(631, (random, round) -> {
            ToothCut cut = Cuts.any(random);
            Mode x = Cuts.anyMode(random);
            Mode y = Cuts.anyMode(random);
            double factor = random.nextDouble(1.05, 3);

            double less = ZeroOrder.of(cut, x, y).smallestDepth();
            double more = ZeroOrder.of(cut, x.withDamping(factor * x.damping()), y.withDamping(factor * y.damping()))
                    .smallestDepth();

            assertThat(more).isGreaterThanOrEqualTo(less * (1 - 1e-3));
        });
    }

    @Test
    void twice_as_stiff_is_quiet_twice_as_deep_and_twice_the_force_half_as_deep() {
        Rounds.each(632, (random, round) -> {
            ToothCut cut = Cuts.any(random);
            Mode x = Cuts.anyMode(random);
            Mode y = Cuts.anyMode(random);
            double depth = ZeroOrder.of(cut, x, y).smallestDepth();

            double stiffer = ZeroOrder.of(cut, x.withStiffness(2 * x.stiffness()), y.withStiffness(2 * y.stiffness()))
                    .smallestDepth();
            var harder = new ToothCut(cut.teeth(), cut.arc(), 2 * cut.specific(), cut.radialRatio());

            assertThat(stiffer).isCloseTo(2 * depth, withinPercentage(1e-6));
            assertThat(ZeroOrder.of(harder, x, y).smallestDepth()).isCloseTo(depth / 2, withinPercentage(1e-6));
        });
    }

    @Test
    void a_tip_that_gives_alike_both_ways_rings_as_soon_climbing_as_against_the_feed() {
        Rounds.each(633, (random, round) -> {
            ToothCut cut = Cuts.any(random);
            Mode mode = Cuts.anyMode(random);
            var mirrored = new Engagement(
                    Math.PI - cut.arc().exit(), Math.PI - cut.arc().start());
            var other = new ToothCut(cut.teeth(), mirrored, cut.specific(), cut.radialRatio());

            assertThat(ZeroOrder.of(other, mode, mode).smallestDepth())
                    .isCloseTo(ZeroOrder.of(cut, mode, mode).smallestDepth(), withinPercentage(0.1));
        });
    }

    @Test
    void turning_feed_and_cut_by_a_right_angle_swaps_the_directions_of_a_slot_alone() {
        Rounds.each(634, (random, round) -> {
            Mode x = Cuts.anyMode(random);
            Mode y = Cuts.anyMode(random);
            var slot = new ToothCut(4, new Engagement(0, Math.PI), 2000, 0.3);

            assertThat(ZeroOrder.of(slot, y, x).smallestDepth())
                    .isCloseTo(ZeroOrder.of(slot, x, y).smallestDepth(), withinPercentage(0.1));
        });
    }

    @Test
    void no_speed_rings_below_the_smallest_depth_and_some_speed_rings_just_above_it() {
        Rounds.each(635, (random, round) -> {
            ToothCut cut = Cuts.any(random);
            Mode x = Cuts.anyMode(random);
            ZeroOrder border = ZeroOrder.of(cut, x, Cuts.anyMode(random));
            double slow = x.frequency() / (20 * cut.teeth());

            List<ZeroOrder.Lobe> lobes = border.lobes(slow, 20 * slow, 400);

            assertThat(lobes).allMatch(lobe -> lobe.depth() >= border.smallestDepth() * (1 - 1e-9));
            assertThat(lobes).anyMatch(lobe -> lobe.depth() < 1.05 * border.smallestDepth());
        });
    }

    @Test
    void one_direction_follows_the_closed_form_of_the_slot() {
        Rounds.each(636, (random, round) -> {
            Mode mode = Cuts.anyMode(random);
            var slot =
                    new ToothCut(random.nextInt(1, 7), new Engagement(0, Math.PI), 1800, random.nextDouble(0.1, 0.6));

            double closed = OneDirection.slot(
                    mode.stiffness(), mode.damping(), slot.teeth() * slot.specific() * slot.radialRatio());

            assertThat(ZeroOrder.of(slot, Receptance.RIGID, mode).smallestDepth())
                    .isCloseTo(closed, withinPercentage(0.1));
        });
    }
}
