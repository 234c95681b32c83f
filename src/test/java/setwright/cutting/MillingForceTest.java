package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class MillingForceTest {
    private static final double DEGREE = Math.PI / 180;

    @Test
    void a_summation_in_small_steps_finds_the_same_means_and_peaks() {
        Rounds.each(20, Math.max(10, Rounds.count(50) / 4), (random, round) -> {
            MillingCut cut = anyCut(random);
            EdgeForce law = anyLaw(random, cut);
            var summed = new SteppedTurn(cut, law).swept();
            MillingLoad load = MillingForce.of(cut, law).load();
            double scale = Math.max(summed.peakResultant(), summed.peak(3));

            assertThat(load.mean().feed()).isCloseTo(summed.mean(0), within(1e-4 * scale));
            assertThat(load.mean().cross()).isCloseTo(summed.mean(1), within(1e-4 * scale));
            assertThat(load.mean().axial()).isCloseTo(summed.mean(2), within(1e-4 * scale));
            assertThat(load.meanTangential()).isCloseTo(summed.mean(3), within(1e-4 * scale));
            assertThat(load.peakResultant()).isCloseTo(summed.peakResultant(), withinPercentage(0.05));
            assertThat(load.peakTangential()).isCloseTo(summed.peak(3), withinPercentage(0.05));
            assertThat(Math.abs(load.peakFeed())).isCloseTo(summed.peak(0), within(5e-4 * scale));
            assertThat(Math.abs(load.peakCross())).isCloseTo(summed.peak(1), within(5e-4 * scale));
        });
    }

    @Test
    void at_any_angle_the_force_is_that_of_the_slices_of_all_edges() {
        Rounds.each(21, (random, round) -> {
            MillingCut cut = anyCut(random);
            EdgeForce law = anyLaw(random, cut);
            double angle = 2 * Math.PI * random.nextDouble();
            double[] slices = new SteppedTurn(cut, law).at(angle, 2000);
            MillingForce turn = MillingForce.of(cut, law);
            double scale = turn.load().peakResultant();

            CutForce force = turn.at(angle);

            assertThat(force.feed()).isCloseTo(slices[0], within(1e-4 * scale));
            assertThat(force.cross()).isCloseTo(slices[1], within(1e-4 * scale));
            assertThat(force.axial()).isCloseTo(slices[2], within(1e-4 * scale));
        });
    }

    @Test
    void the_torque_does_the_work_that_the_chips_ask_for() {
        Rounds.each(22, (random, round) -> {
            MillingCut cut = anyCut(random);
            double kc = 500 + 3000 * random.nextDouble();
            var flat = KienzleForce.of(new Kienzle(kc, 0), cut.cutter());
            double speed = 5 + 500 * random.nextDouble();

            double power = MillingForce.of(cut, flat).load().meanPower(speed);
            double removed = cut.removedPerTurn() * speed / (2 * Math.PI);

            assertThat(power).isCloseTo(CuttingPower.powerOfRemoval(removed, kc), withinPercentage(0.001));
        });
    }

    @Test
    void with_an_exponent_the_power_is_that_of_each_chip_at_its_own_specific_force() {
        Rounds.each(23, (random, round) -> {
            MillingCut cut = anyCut(random);
            var material = anyMaterial(random);
            double speed = 5 + 500 * random.nextDouble();
            double sum = 0;
            int steps = 20000;
            double step = cut.engagement().arc() / steps;
            for (int i = 0; i < steps; i++) {
                double chip = cut.chip(cut.engagement().start() + (i + 0.5) * step);
                double edge = cut.axialDepth() / Math.cos(cut.cutter().leadAngle());
                sum += chip == 0
                        ? 0
                        : material.specificForce(chip)
                                * chip
                                * edge
                                * cut.cutter().radius()
                                * step;
            }
            double workOfATurn = sum * cut.cutter().teeth();

            double power = MillingForce.of(cut, KienzleForce.of(material, cut.cutter()))
                    .load()
                    .meanPower(speed);

            assertThat(power).isCloseTo(workOfATurn * speed / (2 * Math.PI) / 1000, withinPercentage(0.01));
        });
    }

    @Test
    void a_conventional_cut_is_the_climb_cut_seen_in_a_mirror() {
        Rounds.each(24, (random, round) -> {
            var cutter = MillingCutter.square(4 + 40 * random.nextDouble(), 1 + random.nextInt(6), 0);
            var section = new MillingCut.Section(cutter.diameter() * random.nextDouble(0.02, 1), 5);
            var climb = MillingCut.of(cutter, Direction.CLIMB, section, 0.08);
            var conventional = MillingCut.of(cutter, Direction.CONVENTIONAL, section, 0.08);
            var tangential = new KienzleForce(anyMaterial(random), 0, 0);
            var radial = new LinearEdgeForce(new EdgeForce.Parts(0, 900, 0), new EdgeForce.Parts(0, 20, 0));

            CutForce pulled = MillingForce.of(climb, tangential).mean();
            CutForce pushed = MillingForce.of(conventional, tangential).mean();
            CutForce pulledBack = MillingForce.of(climb, radial).mean();
            CutForce pushedBack = MillingForce.of(conventional, radial).mean();

            assertThat(pulled.torque()).isCloseTo(pushed.torque(), withinPercentage(1e-3));
            assertThat(pulled.feed()).isCloseTo(-pushed.feed(), within(1e-4 * pulled.torque()));
            assertThat(pulled.cross()).isCloseTo(pushed.cross(), withinPercentage(1e-3));
            assertThat(pulledBack.feed()).isCloseTo(pushedBack.feed(), withinPercentage(1e-3));
            assertThat(pulledBack.cross()).isCloseTo(-pushedBack.cross(), within(1e-6 * -pulledBack.feed()));
        });
    }

    @Test
    void a_light_climb_cut_pulls_the_cutter_along_and_a_conventional_one_holds_it_back() {
        var cutter = MillingCutter.square(16, 4, 30 * DEGREE);
        var law = KienzleForce.of(new Kienzle(1500, 0.22), cutter);
        var section = new MillingCut.Section(1, 10);

        CutForce climb = MillingForce.of(MillingCut.of(cutter, Direction.CLIMB, section, 0.05), law)
                .mean();
        CutForce conventional = MillingForce.of(MillingCut.of(cutter, Direction.CONVENTIONAL, section, 0.05), law)
                .mean();

        assertThat(climb.feed()).isPositive();
        assertThat(conventional.feed()).isNegative();
        assertThat(climb.cross())
                .as("pushed off the wall, which lies towards -y")
                .isPositive();
    }

    @Test
    void a_full_slot_holds_the_cutter_back_and_pushes_it_to_the_side_where_chips_begin() {
        var cutter = MillingCutter.square(12, 4, 0);
        var slot = MillingCut.of(cutter, Direction.SLOT, new MillingCut.Section(12, 4), 0.05);

        CutForce mean = MillingForce.of(slot, KienzleForce.of(new Kienzle(1500, 0.22), cutter))
                .mean();

        assertThat(mean.feed()).isNegative();
        assertThat(mean.cross()).isPositive();
    }

    @Test
    void the_means_know_nothing_of_the_helix() {
        Rounds.each(25, (random, round) -> {
            MillingCut cut = anyCut(random);
            var law = new KienzleForce(anyMaterial(random), 0.3, 0.2);
            var straight = new MillingCutter(
                    cut.cutter().diameter(),
                    cut.cutter().teeth(),
                    0,
                    cut.cutter().leadAngle());
            var unwound = new MillingCut(straight, cut.engagement(), cut.axialDepth(), cut.feedPerTooth());

            assertThat(MillingForce.of(cut, law).mean())
                    .isEqualTo(MillingForce.of(unwound, law).mean());
        });
    }

    @Test
    void an_edge_that_wraps_the_cutter_evenly_gives_an_even_torque() {
        // Depth of one axial pitch, π D / (z tan β): as much edge leaves the cut as comes in.
        double helix = 40 * DEGREE;
        var cutter = MillingCutter.square(20, 3, helix);
        double depth = Math.PI * 20 / (3 * Math.tan(helix));
        var cut = MillingCut.of(cutter, Direction.CLIMB, new MillingCut.Section(6, depth), 0.06);

        MillingLoad load = MillingForce.of(cut, KienzleForce.of(new Kienzle(800, 0.25), cutter))
                .load();

        assertThat(load.peakTorque()).isCloseTo(load.meanTorque(), withinPercentage(0.01));
    }

    @Test
    void every_printed_peak_is_a_point_of_the_turn_and_no_point_is_beyond_it() {
        Rounds.each(26, (random, round) -> {
            MillingCut cut = anyCut(random);
            MillingLoad load = MillingForce.of(cut, anyLaw(random, cut)).load();

            assertThat(load.turn())
                    .contains(
                            load.peaks().resultant(),
                            load.peaks().feed(),
                            load.peaks().cross());
            assertThat(load.turn()).allSatisfy(point -> {
                assertThat(point.force().resultant()).isLessThanOrEqualTo(load.peakResultant() * (1 + 1e-9));
                assertThat(point.force().torque()).isLessThanOrEqualTo(load.peakTorque() * (1 + 1e-9) + 1e-9);
                assertThat(point.angle()).isBetween(0.0, cut.cutter().pitch());
            });
        });
    }

    @Test
    void a_single_tooth_carries_no_more_than_all_teeth_where_they_all_push_on() {
        Rounds.each(27, (random, round) -> {
            MillingCut cut = anyCut(random);
            MillingLoad load = MillingForce.of(cut, KienzleForce.of(anyMaterial(random), cut.cutter()))
                    .load();

            assertThat(load.peakToothTangential()).isLessThanOrEqualTo(load.peakTangential() * (1 + 1e-6));
            assertThat(load.peakToothTangential() * cut.cutter().teeth())
                    .isGreaterThanOrEqualTo(load.meanTangential() * (1 - 1e-6));
        });
    }

    @Test
    void a_square_shouldered_tooth_alone_in_the_cut_peaks_at_its_largest_chip() {
        var cutter = MillingCutter.square(10, 2, 0);
        var cut = MillingCut.of(cutter, Direction.CLIMB, new MillingCut.Section(3, 2), 0.1);
        var material = new Kienzle(1500, 0.22);
        double chip = ChipThickness.largest(0.1, 3, 10);

        MillingLoad load =
                MillingForce.of(cut, new KienzleForce(material, 0.3, 0)).load();

        assertThat(cut.largestChip()).isCloseTo(chip, within(1e-12));
        double tangential = material.specificForce(chip) * chip * 2;
        assertThat(load.peakToothTangential()).isCloseTo(tangential, withinPercentage(1e-4));
        assertThat(load.peakResultant()).isCloseTo(Math.hypot(1, 0.3) * tangential, withinPercentage(1e-4));
        assertThat(load.peakAngle()).isCloseTo(cut.engagement().start(), within(1e-6));
    }

    @Test
    void a_slanted_edge_presses_towards_the_spindle_and_pulls_on_none_of_the_power() {
        var square = new MillingCutter(63, 5, 0, 0);
        var slanted = new MillingCutter(63, 5, 0, 45 * DEGREE);
        var flat = new KienzleForce(new Kienzle(2000, 0), 0.4, 0);
        var engagement = Engagement.facing(50, 0, 63);

        CutForce upright = MillingForce.of(new MillingCut(square, engagement, 2, 0.1), flat)
                .mean();
        CutForce leaning = MillingForce.of(new MillingCut(slanted, engagement, 2, 0.1), flat)
                .mean();

        assertThat(leaning.torque()).isCloseTo(upright.torque(), withinPercentage(1e-6));
        assertThat(upright.axial()).isZero();
        assertThat(leaning.axial()).isNegative();
    }

    @Test
    void the_wall_keeps_the_force_of_the_moment_when_the_edge_stands_on_it() {
        var cutter = MillingCutter.square(10, 4, 30 * DEGREE);
        var law = KienzleForce.of(new Kienzle(1500, 0.22), cutter);
        var section = new MillingCut.Section(0.5, 10);
        var climb = MillingForce.of(MillingCut.of(cutter, Direction.CLIMB, section, 0.05), law);

        WallForce wall = climb.onWall(Math.PI);

        assertThat(wall.least()).isLessThanOrEqualTo(wall.mean()).isCloseTo(wall.farthest(), within(wall.greatest()));
        assertThat(wall.mean()).isLessThanOrEqualTo(wall.greatest());
        assertThat(wall.greatest()).isCloseTo(climb.at(Math.PI).cross(), withinPercentage(1e-3));
        assertThat(wall.greatest()).isLessThanOrEqualTo(climb.load().peakResultant());
    }

    @Test
    void an_edge_without_helix_leaves_a_climb_wall_with_nothing_on_it() {
        var cutter = MillingCutter.square(10, 2, 0);
        var cut = MillingCut.of(cutter, Direction.CLIMB, new MillingCut.Section(2, 5), 0.05);

        WallForce wall = MillingForce.of(cut, KienzleForce.of(new Kienzle(1500, 0.22), cutter))
                .onWall(Math.PI);

        assertThat(wall.greatest()).isCloseTo(0, within(0.01));
    }

    @Test
    void a_chip_that_starts_from_nothing_needs_no_force_at_first_and_never_an_infinite_one() {
        var material = new Kienzle(2000, 0.3);

        assertThat(material.forcePerWidth(0)).isZero();
        assertThat(material.forcePerWidth(1e-12)).isBetween(0.0, 1e-4);
        assertThat(material.forcePerWidth(1)).isEqualTo(2000);
    }

    @Test
    void a_width_that_the_cutter_does_not_have_is_refused_with_the_width_that_it_has() {
        assertThatThrownBy(() -> Engagement.of(Direction.CLIMB, 13, 12))
                .hasMessage("A cutter of 12.0 mm takes a width above 0 and up to 12.0 mm, not 13.0 mm.");
        assertThatThrownBy(() -> Engagement.of(Direction.SLOT, 10, 12)).hasMessageContaining("climb or conventional");
        assertThatThrownBy(() -> Engagement.facing(10, 40, 50)).hasMessageContaining("cuts nothing of it");
    }

    @Test
    void a_face_cut_in_the_middle_of_the_cutter_is_as_wide_as_the_face() {
        Rounds.each(28, (random, round) -> {
            double diameter = 20 + 60 * random.nextDouble();
            double width = diameter * random.nextDouble(0.1, 0.99);
            double room = (diameter - width) / 2;
            double offset = room * random.nextDouble(-1, 1);

            Engagement face = Engagement.facing(width, offset, diameter);

            assertThat(face.width(diameter)).isCloseTo(width, within(1e-9));
            assertThat(ChipThickness.meanCentred(1, width, diameter))
                    .isCloseTo(
                            new MillingCut(
                                            MillingCutter.square(diameter, 1, 0),
                                            Engagement.facing(width, 0, diameter),
                                            1,
                                            1)
                                    .meanChip(),
                            within(1e-12));
        });
    }

    @Test
    void a_load_is_worked_out_far_within_ten_times_its_target_of_a_fifth_of_a_millisecond() {
        var cutter = MillingCutter.square(12, 4, 30 * DEGREE);
        var cut = MillingCut.of(cutter, Direction.SLOT, new MillingCut.Section(12, 10), 0.05);
        var law = KienzleForce.of(new Kienzle(1500, 0.22), cutter);
        double fastest = Double.POSITIVE_INFINITY;
        for (int batch = 0; batch < 20; batch++) {
            long begin = System.nanoTime();
            for (int i = 0; i < 50; i++) {
                assertThat(MillingForce.of(cut, law).load().turn()).isNotEmpty();
            }
            fastest = Math.min(fastest, (System.nanoTime() - begin) / 50e6);
        }

        assertThat(fastest).as("ms").isLessThan(2);
    }

    static Kienzle anyMaterial(RandomGenerator random) {
        return new Kienzle(random.nextDouble(400, 4000), random.nextDouble(0, 0.4));
    }

    static EdgeForce anyLaw(RandomGenerator random, MillingCut cut) {
        if (random.nextBoolean()) {
            return new KienzleForce(anyMaterial(random), random.nextDouble(0, 1), random.nextDouble(-0.5, 0.8));
        }
        return new LinearEdgeForce(
                new EdgeForce.Parts(
                        random.nextDouble(300, 2500), random.nextDouble(100, 1000), random.nextDouble(-200, 700)),
                new EdgeForce.Parts(random.nextDouble(0, 40), random.nextDouble(0, 40), random.nextDouble(-5, 5)));
    }

    /** From a 2 mm end mill to an 80 mm face mill, light to full width, straight to steep flutes either way. */
    static MillingCut anyCut(RandomGenerator random) {
        double diameter = 2 * Math.pow(40, random.nextDouble());
        double helix = random.nextInt(4) == 0 ? 0 : random.nextDouble(-20, 55) * DEGREE;
        double lead = random.nextInt(3) == 0 ? random.nextDouble(0, 60) * DEGREE : 0;
        var cutter = new MillingCutter(diameter, 1 + random.nextInt(8), helix, lead);
        double width = diameter * Math.pow(0.01, random.nextDouble());
        var section = new MillingCut.Section(width, diameter * random.nextDouble(0.02, 3));
        double feed = random.nextDouble(0.01, 0.3);
        return switch (random.nextInt(4)) {
            case 0 -> MillingCut.of(cutter, Direction.CLIMB, section, feed);
            case 1 -> MillingCut.of(cutter, Direction.CONVENTIONAL, section, feed);
            case 2 -> MillingCut.of(cutter, Direction.SLOT, new MillingCut.Section(diameter, section.depth()), feed);
            default -> MillingCut.facing(cutter, diameter * random.nextDouble(-0.3, 0.3), section, feed);
        };
    }
}
