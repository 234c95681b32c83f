package setwright.rigidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.Band;
import setwright.shop.ToolMaterial;

class ToolBeamTest {
    @Test
    void virtual_work_summed_up_in_small_steps_finds_the_same_deflection_and_slope() {
        Rounds.each(71, (random, round) -> {
            ToolBeam beam = anyBeam(random);
            double place = beam.stickOut() * random.nextDouble(0.05, 1);
            double load = beam.stickOut() * random.nextDouble(0.05, 1);

            assertThat(beam.compliance(place, load)).isCloseTo(summed(beam, place, load), withinPercentage(0.01));
            double step = beam.stickOut() * 1e-4;
            double leaning = (summed(beam, place, load) - summed(beam, place - step, load)) / step;
            assertThat(beam.slope(place, load)).isCloseTo(leaning, withinPercentage(0.5));
        });
    }

    /** The work of a unit force at one place along the bending of a unit force at the other: midpoints of every section. */
    private static double summed(ToolBeam beam, double place, double load) {
        double sum = 0;
        double from = 0;
        for (BeamSection section : beam.sections()) {
            int steps = 3000;
            double step = section.length() / steps;
            double radius = section.diameter() / 2;
            double stiffness = beam.modulus() * Math.PI * radius * radius * radius * radius / 4;
            for (int i = 0; i < steps; i++) {
                double s = from + (i + 0.5) * step;
                sum += Math.max(0, place - s) * Math.max(0, load - s) * step / stiffness;
            }
            from += section.length();
        }
        return sum;
    }

    @Test
    void what_a_force_here_does_there_a_force_there_does_here() {
        Rounds.each(72, (random, round) -> {
            ToolBeam beam = anyBeam(random);
            double one = beam.stickOut() * random.nextDouble();
            double other = beam.stickOut() * random.nextDouble();

            assertThat(beam.compliance(one, other)).isCloseTo(beam.compliance(other, one), withinPercentage(1e-9));
        });
    }

    @Test
    void beyond_the_force_the_tool_stays_straight() {
        ToolBeam beam = FlutedTool.endMill(12, 26, 12).beam(50, 210000);

        double atLoad = beam.compliance(40, 40);

        assertThat(beam.compliance(50, 40)).isCloseTo(atLoad + 10 * beam.slope(40, 40), withinPercentage(1e-9));
    }

    @Test
    void a_thinner_neck_gives_more_and_a_longer_shank_too() {
        var plain = new ToolBeam(List.of(new BeamSection(20, 12), new BeamSection(20, 9.6)), 580000);
        var necked = new ToolBeam(
                List.of(new BeamSection(10, 12), new BeamSection(10, 8), new BeamSection(20, 9.6)), 580000);
        var longer = new ToolBeam(List.of(new BeamSection(25, 12), new BeamSection(20, 9.6)), 580000);

        assertThat(necked.compliance(40, 40)).isGreaterThan(plain.compliance(40, 40));
        assertThat(longer.compliance(45, 45)).isGreaterThan(plain.compliance(40, 40));
    }

    @Test
    void flutes_that_reach_into_the_holder_are_the_whole_stick_out() {
        assertThat(FlutedTool.endMill(10, 30, 10).beam(25, 210000)).isEqualTo(ToolBeam.rod(25, 8, 210000));
    }

    @Test
    void a_rod_is_stressed_most_where_it_is_held() {
        ToolStress stress = ToolBeam.rod(40, 10, 210000).stress(500, 8000, 40);

        assertThat(stress.place()).isZero();
        assertThat(stress.bending()).isCloseTo(500 * 40 / (Math.PI * 1000 / 32), withinPercentage(1e-9));
        assertThat(stress.torsion()).isCloseTo(8000 / (Math.PI * 1000 / 16), withinPercentage(1e-9));
        assertThat(stress.combined()).isGreaterThan(stress.bending());
    }

    @Test
    void a_thin_fluted_end_is_stressed_most_where_it_begins() {
        ToolStress stress = new FlutedTool(6, 30, 10, 0.8).beam(45, 210000).stress(100, 0, 43);

        assertThat(stress.place()).isEqualTo(15);
    }

    @Test
    void what_gives_adds_up_and_the_largest_part_is_named() {
        var beam = ToolBeam.rod(30, 16, 210000);
        var mounted = new MountedTool(beam, new Springs(20000, 1e8, 8000));

        Compliance compliance = mounted.compliance(30, 30);

        assertThat(compliance.governing()).isEqualTo(Compliance.Part.MACHINE);
        assertThat(compliance.total())
                .isCloseTo(beam.compliance(30, 30) + 1 / 20000.0 + 900 / 1e8 + 1 / 8000.0, within(1e-15));
        assertThat(mounted.tipDeflection(100, 30)).isCloseTo(100 / compliance.stiffness(), withinPercentage(1e-9));
        var longer = new MountedTool(ToolBeam.rod(120, 10, 210000), Springs.ofMachine(8000));
        assertThat(longer.compliance(120, 120).governing()).isEqualTo(Compliance.Part.TOOL);
    }

    @Test
    void a_rigid_holder_leaves_the_tool_alone() {
        var beam = ToolBeam.rod(30, 16, 210000);

        Compliance compliance = new MountedTool(beam, Springs.RIGID).compliance(30, 30);

        assertThat(compliance).isEqualTo(new Compliance(beam.compliance(30, 30), 0, 0, 0));
    }

    @Test
    void a_soft_machine_is_the_high_end_of_the_band_of_deflection() {
        var mounted = new MountedTool(ToolBeam.rod(30, 16, 210000), Springs.RIGID);

        Band deflection = mounted.tipDeflection(500, 28, new Band(5000, 10000, 20000));

        assertThat(deflection.high() - deflection.low()).isCloseTo(500 / 5000.0 - 500 / 20000.0, within(1e-12));
    }

    @Test
    void the_tip_leans_by_the_beam_and_by_the_tilt_of_the_clamp() {
        var beam = ToolBeam.rod(30, 16, 210000);
        var mounted = new MountedTool(beam, new Springs(20000, 1e8, 8000));

        assertThat(mounted.tipSlope(200, 25)).isCloseTo(200 * (beam.slope(30, 25) + 25 / 1e8), within(1e-15));
    }

    @Test
    void the_factors_of_the_ends_are_those_of_eulers_columns() {
        assertThat(Rod.Ends.FIXED_FREE.factor()).isCloseTo(Math.PI * Math.PI / 4, withinPercentage(0.02));
        assertThat(Rod.Ends.PINNED_PINNED.factor()).isCloseTo(Math.PI * Math.PI, withinPercentage(0.02));
        assertThat(Rod.Ends.FIXED_FIXED.factor()).isCloseTo(4 * Math.PI * Math.PI, withinPercentage(0.02));
        double smallestRoot = Math.sqrt(Rod.Ends.FIXED_PINNED.factor());
        assertThat(Math.tan(smallestRoot)).as("tan k = k").isCloseTo(smallestRoot, withinPercentage(0.5));
    }

    @Test
    void carbide_is_stiffer_than_high_speed_steel() {
        assertThat(ToolMaterials.modulus(ToolMaterial.CARBIDE).low())
                .isGreaterThan(2 * ToolMaterials.modulus(ToolMaterial.HSS).high());
        assertThat(ToolMaterials.bendingStrength(ToolMaterial.HSS).low()).isCloseTo(560, within(1e-9));
    }

    @Test
    void a_spring_of_nothing_is_refused() {
        assertThatThrownBy(() -> Springs.ofMachine(0)).hasMessageContaining("A spring is stiffer than 0");
    }

    private static ToolBeam anyBeam(RandomGenerator random) {
        List<BeamSection> sections = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(4); i++) {
            sections.add(new BeamSection(random.nextDouble(2, 50), random.nextDouble(3, 25)));
        }
        return new ToolBeam(sections, random.nextDouble(60000, 600000));
    }
}
