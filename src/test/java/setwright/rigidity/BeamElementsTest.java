package setwright.rigidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

/** Stepped tools on their springs against a chain of beam elements, and what must hold of all of them. */
class BeamElementsTest {
    /** In every section: with the shortest tool of one section that is 60 elements. */
    private static final int EACH = 60;

    @Test
    void a_chain_of_beam_elements_gives_by_the_same_amount_within_half_a_percent() {
        Rounds.each(811, (random, round) -> {
            ToolBeam beam = anyBeam(random);
            Springs springs = anySprings(random);
            MountedTool tool = new MountedTool(beam, springs);
            BeamElements chain = BeamElements.of(beam, springs, EACH);
            int load = chain.node(random.nextDouble(0.3, 1));
            int at = chain.node(random.nextDouble(0.3, 1));
            double from = chain.place(load);

            assertThat(tool.compliance(chain.place(at), from).total())
                    .isCloseTo(chain.deflection(at, load), withinPercentage(0.5));
            assertThat(tool.tipDeflection(1, from))
                    .isCloseTo(chain.deflection(chain.tip(), load), withinPercentage(0.5));
            assertThat(tool.tipSlope(1, from)).isCloseTo(chain.slope(chain.tip(), load), withinPercentage(0.5));
        });
    }

    @Test
    void a_tapered_length_gives_as_a_taper_cut_into_a_thousand_rods() {
        Rounds.each(812, (random, round) -> {
            double length = random.nextDouble(10, 80);
            double from = random.nextDouble(8, 25);
            double to = from * random.nextDouble(0.4, 1.6);
            List<BeamSection> fine = new ArrayList<>();
            for (int i = 0; i < 1000; i++) {
                fine.add(new BeamSection(length / 1000, from + (to - from) * (i + 0.5) / 1000));
            }
            double load = length * random.nextDouble(0.5, 1);

            assertThat(new ToolBeam(BeamSection.taper(length, from, to), 210000).compliance(length, load))
                    .isCloseTo(new ToolBeam(fine, 210000).compliance(length, load), withinPercentage(0.1));
        });
    }

    @Test
    void a_longer_stick_out_is_never_stiffer() {
        Rounds.each(813, (random, round) -> {
            FlutedTool tool = new FlutedTool(
                    random.nextDouble(2, 25),
                    random.nextDouble(4, 60),
                    random.nextDouble(3, 25),
                    random.nextDouble(0.5, 1));
            Springs springs = anySprings(random);
            double out = random.nextDouble(5, 120);
            double more = out + random.nextDouble(0.1, 40);

            assertThat(new MountedTool(tool.beam(more, 210000), springs).tipDeflection(1, more))
                    .isGreaterThan(new MountedTool(tool.beam(out, 210000), springs).tipDeflection(1, out));
        });
    }

    @Test
    void a_stiffer_joint_never_makes_the_tool_softer() {
        Rounds.each(814, (random, round) -> {
            ToolBeam beam = anyBeam(random);
            Springs soft = anySprings(random);
            HolderSeat seat = soft.seat();
            Springs stiff = new Springs(
                    soft.clampShift() * random.nextDouble(1, 3),
                    soft.clampTilt() * random.nextDouble(1, 3),
                    soft.machine() * random.nextDouble(1, 3),
                    new HolderSeat(seat.projection(), seat.diameter(), seat.taperTilt() * random.nextDouble(1, 3)));
            double load = beam.stickOut() * random.nextDouble(0.3, 1);

            assertThat(new MountedTool(beam, stiff).tipDeflection(1, load))
                    .isLessThanOrEqualTo(new MountedTool(beam, soft).tipDeflection(1, load));
        });
    }

    private static ToolBeam anyBeam(RandomGenerator random) {
        List<BeamSection> sections = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            sections.add(new BeamSection(random.nextDouble(4, 50), random.nextDouble(4, 25)));
        }
        return new ToolBeam(sections, random.nextDouble(150000, 600000));
    }

    private static Springs anySprings(RandomGenerator random) {
        HolderSeat seat = random.nextBoolean()
                ? HolderSeat.RIGID
                : new HolderSeat(random.nextDouble(20, 90), random.nextDouble(20, 60), random.nextDouble(1e7, 1e10));
        return new Springs(
                random.nextDouble(5e3, 1e5), random.nextDouble(1e7, 1e10), random.nextDouble(2e3, 5e4), seat);
    }
}
