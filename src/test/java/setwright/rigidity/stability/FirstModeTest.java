package setwright.rigidity.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.rigidity.BeamSection;
import setwright.rigidity.FlutedTool;
import setwright.rigidity.MountedTool;
import setwright.rigidity.Springs;
import setwright.rigidity.ToolBeam;

class FirstModeTest {
    private static final double DENSITY = 8.1e-6;

    @Test
    void a_chain_of_finite_elements_swings_as_fast_and_as_stiffly() {
        Rounds.each(621, Rounds.count(30), (random, round) -> {
            MountedTool tool = any(random);
            double holder = random.nextBoolean() ? 0 : random.nextDouble(0.1, 2);

            Mode mode = FirstMode.of(tool, DENSITY, holder);

            var chain = new SwingingElements(tool, DENSITY, holder).first();
            assertThat(mode.frequency()).isCloseTo(chain.frequency(), withinPercentage(0.5));
            assertThat(mode.stiffness()).isCloseTo(chain.stiffness(), withinPercentage(1));
        });
    }

    @Test
    void a_plain_rod_held_rigidly_swings_as_textbooks_say() {
        double length = 60;
        double diameter = 10;
        Mode mode = FirstMode.of(new MountedTool(ToolBeam.rod(length, diameter, 210000), Springs.RIGID), 7.85e-6, 0);

        double inertia = Math.PI / 64 * Math.pow(diameter, 4);
        double perLength = 7.85e-6 * Math.PI / 4 * diameter * diameter / 1000;
        double w = 1.8751 * 1.8751 * Math.sqrt(210000 * inertia / (perLength * Math.pow(length, 4)));
        assertThat(mode.frequency()).isCloseTo(w, withinPercentage(0.2));
        double still = 3 * 210000 * inertia / Math.pow(length, 3);
        assertThat(mode.stiffness())
                .as("modal over static: 1.8751^4 / 12")
                .isCloseTo(1.030 * still, withinPercentage(0.5));
    }

    @Test
    void a_heavy_holder_on_a_soft_machine_swings_as_one_mass() {
        var tool = new MountedTool(ToolBeam.rod(20, 20, 210000), Springs.ofMachine(5000));

        Mode mode = FirstMode.of(tool, 7.85e-6, 10);

        double mass = 10 + 7.85e-6 * 20 * Math.PI * 100;
        assertThat(mode.hertz()).isCloseTo(Math.sqrt(5000 * 1000 / mass) / (2 * Math.PI), withinPercentage(1));
    }

    @Test
    void a_longer_stick_out_never_raises_the_depth_that_is_quiet_at_every_speed() {
        Rounds.each(622, (random, round) -> {
            double diameter = random.nextDouble(4, 25);
            double flutes = random.nextDouble(1, 3) * diameter;
            double out = random.nextDouble(1.5, 5) * diameter;
            var springs =
                    new Springs(random.nextDouble(2e4, 1e5), random.nextDouble(1e7, 1e9), random.nextDouble(3e3, 3e4));
            var cut = Cuts.any(random);
            double before = Double.POSITIVE_INFINITY;
            for (double length = out; length < 1.5 * out; length += 0.05 * out) {
                var beam = FlutedTool.endMill(diameter, flutes, diameter).beam(length, 210000);
                Mode mode = FirstMode.of(new MountedTool(beam, springs), DENSITY, 0.5);
                double depth = ZeroOrder.of(cut, mode, mode).smallestDepth();
                assertThat(depth).isLessThanOrEqualTo(before * (1 + 1e-3));
                before = depth;
            }
        });
    }

    private static MountedTool any(RandomGenerator random) {
        List<BeamSection> sections = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            sections.add(new BeamSection(random.nextDouble(5, 50), random.nextDouble(5, 25)));
        }
        var beam = new ToolBeam(sections, random.nextDouble(150000, 600000));
        return new MountedTool(
                beam,
                new Springs(random.nextDouble(5e3, 1e5), random.nextDouble(1e7, 1e9), random.nextDouble(2e3, 3e4)));
    }
}
