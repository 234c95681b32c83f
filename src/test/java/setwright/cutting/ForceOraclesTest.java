package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.random.RandomGenerator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.integration.UnivariateIntegrator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.Unit;

/** Forces of milling against closed forms, against adaptive quadrature, and against what cannot be otherwise. */
class ForceOraclesTest {
    private static final UnivariateIntegrator QUADRATURE = new IterativeLegendreGaussIntegrator(12, 1e-9, 1e-10);

    /**
     * Mean forces of a full slot in closed form (from memory; rows C09 of worked-examples.csv say the same of one case):
     * Fx = -(z a / 4) Krc fz - (z a / π) Kre, Fy = (z a / 4) Ktc fz + (z a / π) Kte, Fz = (z a / π) Kac fz + (z a / 2) Kae.
     */
    @Test
    void the_mean_force_of_a_full_slot_is_that_of_the_closed_form() {
        Rounds.each(60, (random, round) -> {
            var cutting = new EdgeForce.Parts(
                    random.nextDouble(300, 2500), random.nextDouble(50, 900), random.nextDouble(10, 700));
            var edge = new EdgeForce.Parts(random.nextDouble(5, 50), random.nextDouble(5, 50), random.nextDouble(1, 5));
            int teeth = 1 + random.nextInt(8);
            double depth = random.nextDouble(0.5, 20);
            double feed = random.nextDouble(0.01, 0.3);
            var cutter = MillingCutter.square(random.nextDouble(3, 60), teeth, random.nextDouble(0, 0.8));
            var cut = MillingCut.of(cutter, Direction.SLOT, new MillingCut.Section(cutter.diameter(), depth), feed);

            CutForce mean =
                    MillingForce.of(cut, new LinearEdgeForce(cutting, edge)).mean();

            double whole = teeth * depth;
            assertThat(mean.feed())
                    .isCloseTo(
                            -whole / 4 * cutting.normal() * feed - whole / Math.PI * edge.normal(),
                            withinPercentage(0.2));
            assertThat(mean.cross())
                    .isCloseTo(
                            whole / 4 * cutting.tangential() * feed + whole / Math.PI * edge.tangential(),
                            withinPercentage(0.2));
            assertThat(mean.axial())
                    .isCloseTo(
                            whole / Math.PI * cutting.along() * feed + whole / 2 * edge.along(), withinPercentage(0.2));
        });
    }

    @Test
    void the_mean_kienzle_forces_are_those_of_adaptive_quadrature() {
        Rounds.each(61, (random, round) -> {
            MillingCut cut = squareCut(random);
            var material = MillingForceTest.anyMaterial(random);
            double radial = random.nextDouble(0.1, 0.8);
            CutForce mean =
                    MillingForce.of(cut, new KienzleForce(material, radial, 0)).mean();

            double share = cut.axialDepth() * cut.cutter().teeth() / (2 * Math.PI);
            double tangential = share * integral(cut, phi -> kienzle(cut, material, phi));
            double feed = share
                    * integral(cut, phi -> kienzle(cut, material, phi) * (-Math.cos(phi) - radial * Math.sin(phi)));
            double cross = share
                    * integral(cut, phi -> kienzle(cut, material, phi) * (Math.sin(phi) - radial * Math.cos(phi)));

            assertThat(mean.torque() / cut.cutter().radius()).isCloseTo(tangential, withinPercentage(0.1));
            assertThat(mean.feed()).isCloseTo(feed, within(0.001 * tangential));
            assertThat(mean.cross()).isCloseTo(cross, within(0.001 * tangential));
        });
    }

    @Test
    void the_force_on_a_tooth_wound_over_part_of_the_arc_is_that_of_adaptive_quadrature() {
        Rounds.each(62, (random, round) -> {
            MillingCut cut = squareCut(random);
            var material = MillingForceTest.anyMaterial(random);
            double lag = cut.cutter().lag(cut.axialDepth());
            Engagement arc = cut.engagement();
            double tip = arc.start() + random.nextDouble(0.05, 0.95) * (arc.arc() + lag);
            double low = Math.max(arc.start(), tip - lag);
            double high = Math.min(arc.exit(), tip);
            double tangential = QUADRATURE.integrate(100000, phi -> kienzle(cut, material, phi), low, high)
                    * cut.axialDepth()
                    / lag;

            double torque = MillingForce.of(cut, new KienzleForce(material, 0.3, 0))
                    .onOneTooth(tip)
                    .torque();

            double most = cut.axialDepth() * material.forcePerWidth(cut.largestChip());
            assertThat(torque / cut.cutter().radius()).isCloseTo(tangential, within(0.001 * most));
        });
    }

    private static double integral(MillingCut cut, UnivariateFunction force) {
        Engagement arc = cut.engagement();
        double middle = (arc.start() + arc.exit()) / 2;
        return QUADRATURE.integrate(100000, force, arc.start(), middle)
                + QUADRATURE.integrate(100000, force, middle, arc.exit());
    }

    private static double kienzle(MillingCut cut, Kienzle material, double phi) {
        return material.kc11() * Math.pow(cut.feedPerTooth() * Math.max(0, Math.sin(phi)), 1 - material.mc());
    }

    private static MillingCut squareCut(RandomGenerator random) {
        var cutter = MillingCutter.square(random.nextDouble(3, 60), 1 + random.nextInt(8), random.nextDouble(0.1, 0.8));
        double width = cutter.diameter() * random.nextDouble(0.02, 0.98);
        Direction direction = random.nextBoolean() ? Direction.CLIMB : Direction.CONVENTIONAL;
        var section = new MillingCut.Section(width, random.nextDouble(0.3, 20));
        return MillingCut.of(cutter, direction, section, random.nextDouble(0.01, 0.3));
    }

    @Test
    void a_cut_even_about_the_feed_has_forces_even_about_the_feed() {
        Rounds.each(63, (random, round) -> {
            double diameter = random.nextDouble(10, 80);
            var cutter = MillingCutter.square(diameter, 1 + random.nextInt(6), 0);
            Engagement even = Engagement.facing(diameter * random.nextDouble(0.1, 1), 0, diameter);
            var cut = new MillingCut(cutter, even, 2, 0.1);
            var tangential = new KienzleForce(MillingForceTest.anyMaterial(random), 0, 0);
            MillingForce force = MillingForce.of(cut, tangential);
            double turn = even.arc() / 2 * random.nextDouble(0.05, 0.95);

            CutForce before = force.onOneTooth(Math.PI / 2 - turn);
            CutForce after = force.onOneTooth(Math.PI / 2 + turn);

            assertThat(force.mean().feed())
                    .isCloseTo(0, within(1e-6 * force.mean().cross()));
            assertThat(before.feed()).isCloseTo(-after.feed(), within(1e-6 * before.cross()));
            assertThat(before.cross()).isCloseTo(after.cross(), withinPercentage(1e-6));
        });
    }

    @Test
    void a_finer_feed_never_gives_a_thicker_chip_nor_more_force() {
        Rounds.each(64, (random, round) -> {
            MillingCut coarse = MillingForceTest.anyCut(random);
            MillingCut fine = coarse.withFeedPerTooth(coarse.feedPerTooth() * random.nextDouble(0.05, 1));
            var law = KienzleForce.of(MillingForceTest.anyMaterial(random), coarse.cutter());
            UnevenTeeth uneven = UnevenTeeth.runningOut(coarse.cutter().teeth(), 0.02, random.nextDouble());

            assertThat(fine.largestChip()).isLessThanOrEqualTo(coarse.largestChip());
            assertThat(fine.meanChip()).isLessThanOrEqualTo(coarse.meanChip());
            assertThat(uneven.largest(fine.feedPerTooth())).isLessThanOrEqualTo(uneven.largest(coarse.feedPerTooth()));
            assertThat(MillingForce.of(fine, law).mean().torque())
                    .isLessThanOrEqualTo(MillingForce.of(coarse, law).mean().torque() * (1 + 1e-9));
        });
    }

    @Test
    void more_depth_at_the_same_speed_and_feed_never_needs_less_power() {
        Rounds.each(65, (random, round) -> {
            MillingCut shallow = MillingForceTest.anyCut(random);
            MillingCut deep = shallow.withDepth(shallow.axialDepth() * random.nextDouble(1, 3));
            EdgeForce law = MillingForceTest.anyLaw(random, shallow);

            assertThat(MillingForce.of(deep, law).mean().torque())
                    .isGreaterThanOrEqualTo(MillingForce.of(shallow, law).mean().torque());
            double radius = random.nextDouble(3, 12);
            double depth = radius * random.nextDouble(0.1, 0.6);
            assertThat(ball(radius, depth * random.nextDouble(1, 1.5)))
                    .isGreaterThanOrEqualTo(0.998 * ball(radius, depth));
        });
    }

    private static double ball(double radius, double depth) {
        var shape = new EdgeShape.Rounded(radius, radius);
        var section = new MillingCut.Section(2 * shape.widest(depth), depth);
        var teeth = new ShapedCut.Teeth(2, 0.5);
        ShapedCut cut = ShapedCut.of(shape, teeth, Direction.SLOT, section, ShapedCut.Side.UPRIGHT, 0.05);
        return MillingForce.of(cut, new KienzleForce(new Kienzle(1500, 0.22), 0.3, 0.5))
                .mean()
                .torque();
    }

    @Test
    void units_of_power_torque_and_force_come_back_as_they_went_in() {
        Rounds.each(66, (random, round) -> {
            double torque = random.nextDouble(10, 1e5);
            double speed = random.nextDouble(1, 600);
            for (Unit unit : new Unit[] {Unit.KW, Unit.HP, Unit.N_M, Unit.N, Unit.LBF, Unit.MM_PER_TOOTH}) {
                assertThat(unit.toInside(unit.fromInside(torque))).isCloseTo(torque, withinPercentage(1e-9));
            }
            assertThat(CuttingPower.torque(CuttingPower.power(torque, speed), speed))
                    .isCloseTo(torque, withinPercentage(1e-9));
        });
    }
}
