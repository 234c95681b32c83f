package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class UnevenTeethTest {
    /** By hand: z = 2, TIR 0.04, so e = 0.02; fz = 0.05: one tooth takes 0.09, the other 0.01, together 2 fz. */
    @Test
    void of_two_teeth_one_takes_what_the_other_leaves() {
        UnevenTeeth two = UnevenTeeth.runningOut(2, 0.02, 0);

        assertThat(two.chip(0, 0.05)).isCloseTo(0.09, within(1e-12));
        assertThat(two.chip(1, 0.05)).isCloseTo(0.01, within(1e-12));
    }

    @Test
    void a_tooth_that_stands_too_far_back_cuts_nothing_and_the_other_takes_all() {
        UnevenTeeth two = UnevenTeeth.runningOut(2, 0.04, 0);

        assertThat(two.chip(0, 0.05)).isCloseTo(0.1, within(1e-12));
        assertThat(two.chip(1, 0.05)).isZero();
    }

    @Test
    void teeth_of_any_number_take_what_a_worn_down_line_of_stock_leaves_them() {
        Rounds.each(40, (random, round) -> {
            int count = 1 + random.nextInt(8);
            UnevenTeeth teeth = any(random, count);
            double even = random.nextDouble(0.002, 0.2);
            double[] taken = linedUp(teeth, even);

            double sum = 0;
            for (int tooth = 0; tooth < count; tooth++) {
                assertThat(teeth.chip(tooth, even)).isCloseTo(taken[tooth], within(1e-9));
                sum += teeth.chip(tooth, even);
            }
            assertThat(sum).as("in a turn").isCloseTo(count * even, within(1e-9));
        });
    }

    /** Turn after turn each tooth comes by, the work fed on by one chip a tooth, and cuts whatever stands in its way. */
    private static double[] linedUp(UnevenTeeth teeth, double even) {
        int count = teeth.teeth();
        double[] taken = new double[count];
        double surface = 0;
        for (int step = 0; step < 40 * count; step++) {
            int tooth = Math.floorMod(-step, count);
            double reach = step * even + standing(teeth, tooth);
            taken[tooth] = Math.max(0, reach - surface);
            surface = Math.max(surface, reach);
        }
        return taken;
    }

    /** How far a tooth stands out over the last, asked of the teeth at a feed so large that every tooth cuts. */
    private static double standing(UnevenTeeth teeth, int tooth) {
        double out = 0;
        for (int i = tooth; i < teeth.teeth() - 1; i++) {
            out += teeth.chip(i, 100) - 100;
        }
        return out;
    }

    private static UnevenTeeth any(RandomGenerator random, int count) {
        UnevenTeeth runningOut = UnevenTeeth.runningOut(count, random.nextDouble(0, 0.1), 7 * random.nextDouble());
        return random.nextBoolean()
                ? runningOut
                : runningOut.and(UnevenTeeth.waved(count, random.nextDouble(0, 0.6), random.nextDouble()));
    }

    @Test
    void run_out_never_makes_the_largest_chip_smaller_nor_larger_than_the_feed_of_a_turn() {
        Rounds.each(41, (random, round) -> {
            int count = 1 + random.nextInt(8);
            double even = random.nextDouble(0.002, 0.2);
            double offset = random.nextDouble(0, 0.06);
            UnevenTeeth worst = UnevenTeeth.worstRunningOut(count, offset, even);
            UnevenTeeth any = UnevenTeeth.runningOut(count, offset, 7 * random.nextDouble());

            assertThat(worst.chip(0, even)).isCloseTo(worst.largest(even), within(1e-12));
            assertThat(worst.largest(even)).isBetween(even - 1e-12, count * even + 1e-12);
            assertThat(any.largest(even)).isLessThanOrEqualTo(worst.largest(even) + 0.02 * offset);
        });
    }

    @Test
    void the_power_of_a_force_in_proportion_to_the_chip_does_not_mind_run_out_but_its_peak_does() {
        Rounds.each(42, (random, round) -> {
            var cutter = MillingCutter.square(random.nextDouble(6, 30), 2 + random.nextInt(5), 0.5);
            double width = cutter.diameter() * random.nextDouble(0.1, 1);
            var cut = ShapedCut.of(MillingCut.of(cutter, Direction.CLIMB, new MillingCut.Section(width, 5), 0.05));
            var flat = KienzleForce.of(new Kienzle(1800, 0), cutter);
            UnevenTeeth teeth = UnevenTeeth.worstRunningOut(cutter.teeth(), random.nextDouble(0.005, 0.02), 0.05);

            MillingForce even = MillingForce.of(cut, flat);
            MillingForce uneven = MillingForce.of(cut, flat, teeth);

            assertThat(uneven.mean().torque()).isCloseTo(even.mean().torque(), withinPercentage(0.5));
            assertThat(uneven.largest().force().resultant())
                    .isGreaterThan(0.999 * even.largest().force().resultant());
        });
    }

    /** Two teeth in a narrow climb cut, one alone in it at a time: (0.09 / 0.05)^0.75 = 1.554 times the force. */
    @Test
    void the_peak_of_the_tooth_that_leads_is_that_of_its_own_chip() {
        var cutter = MillingCutter.square(10, 2, 0);
        var cut = ShapedCut.of(MillingCut.of(cutter, Direction.SLOT, new MillingCut.Section(10, 2), 0.05));
        var law = KienzleForce.of(new Kienzle(1500, 0.25), cutter);

        TurnPoint alone = MillingForce.of(cut, law).largest();
        TurnPoint leading =
                MillingForce.of(cut, law, UnevenTeeth.runningOut(2, 0.02, 0)).largest();

        assertThat(leading.force().resultant() / alone.force().resultant()).isCloseTo(1.554, within(0.002));
    }

    /** Waves far deeper than the feed: at every height one tooth of four takes the feed of a turn: 4^-0.25 = 0.707. */
    @Test
    void a_roughing_end_mill_asks_for_less_because_its_chips_are_thicker() {
        var cutter = MillingCutter.square(16, 4, 0.5);
        var cut = MillingCut.of(cutter, Direction.SLOT, new MillingCut.Section(16, 8), 0.04);
        var law = KienzleForce.of(new Kienzle(1500, 0.25), cutter);

        double plain = MillingForce.of(cut, law).mean().torque();
        double waved = MillingForce.of(cut, SharedForce.waved(law, 4, 5)).mean().torque();

        assertThat(waved / plain).isCloseTo(Math.pow(4, -0.25), withinPercentage(2));
    }

    @Test
    void a_whole_turn_of_unlike_teeth_closes_and_holds_its_largest_force() {
        var cutter = MillingCutter.square(12, 4, 0.5);
        var cut = ShapedCut.of(MillingCut.of(cutter, Direction.CLIMB, new MillingCut.Section(3, 10), 0.05));
        var law = KienzleForce.of(new Kienzle(1500, 0.22), cutter);
        MillingForce force = MillingForce.of(cut, law, UnevenTeeth.worstRunningOut(4, 0.015, 0.05));

        ForcePolygon polygon = ForcePolygon.of(force);

        assertThat(polygon.moments()).hasSizeGreaterThanOrEqualTo(361);
        assertThat(polygon.moments().get(0).force())
                .isEqualTo(polygon.moments().get(polygon.moments().size() - 1).force());
        assertThat(polygon.largest()).isCloseTo(force.largest().force().resultant(), withinPercentage(1e-9));
        assertThat(polygon.moments()).isSortedAccordingTo((one, other) -> Double.compare(one.angle(), other.angle()));
    }
}
