package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import setwright.Rounds;

class ShapedCutTest {
    private static final double DEGREE = Math.PI / 180;
    private static final ShapedCut.Teeth TEETH = new ShapedCut.Teeth(4, 0.5);
    private static final KienzleForce FLAT = new KienzleForce(new Kienzle(2000, 0), 0.3, 0.5);

    private static ShapedCut upright(EdgeShape shape, double width, double depth) {
        var section = new MillingCut.Section(width, depth);
        return ShapedCut.of(shape, TEETH, Direction.CLIMB, section, ShapedCut.Side.UPRIGHT, 0.05);
    }

    private static ShapedCut slot(EdgeShape shape, double depth) {
        var section = new MillingCut.Section(2 * shape.widest(depth), depth);
        return ShapedCut.of(shape, TEETH, Direction.SLOT, section, ShapedCut.Side.UPRIGHT, 0.05);
    }

    /** Section of the chip so much in mm² for a feed of 4 x 0.05 mm a turn. */
    private static double section(ShapedCut cut) {
        return cut.removedPerTurn() / 0.2;
    }

    @Test
    void a_chamfer_takes_the_triangle_at_the_edge() {
        // 45 degrees, 3 mm: 3² / 2.
        assertThat(section(upright(new EdgeShape.Conical(1, 45 * DEGREE), 3, 3)))
                .isCloseTo(4.5, withinPercentage(1));
    }

    @Test
    void a_dovetail_cutter_takes_the_triangle_under_the_flank() {
        // 60 degrees, 6 mm deep: flank 6 / tan 60 = 3.464; 6 x 3.464 / 2.
        var shape = new EdgeShape.Conical(12, -30 * DEGREE);

        assertThat(section(upright(shape, 6 / Math.tan(60 * DEGREE), 6))).isCloseTo(10.392, withinPercentage(1));
    }

    @Test
    void a_corner_rounder_takes_what_lies_outside_the_quarter_circle() {
        // (1 - π / 4) 5²
        assertThat(section(upright(new EdgeShape.Hollow(4, 5), 5, 5))).isCloseTo(5.365, withinPercentage(1));
    }

    @Test
    void a_ball_leaves_a_groove_with_the_section_of_a_circle_cut_off() {
        // R 6, 2 deep: half angle arccos(4/6) = 0.84107 rad; R² (θ - sin θ cos θ)
        double half = Math.acos(4.0 / 6);
        double area = 36 * (half - Math.sin(half) * Math.cos(half));

        ShapedCut groove = slot(new EdgeShape.Rounded(6, 6), 2);

        assertThat(section(groove)).isCloseTo(area, withinPercentage(0.5));
        assertThat(groove.whole().cutter().diameter()).isCloseTo(2 * Math.sqrt(2 * (12 - 2)), within(1e-9));
    }

    @Test
    void a_rounded_corner_takes_a_slot_less_its_two_corners() {
        // 10 wide, 4 deep, corners 1: 40 - 2 (1 - π / 4)
        assertThat(section(slot(new EdgeShape.Rounded(5, 1), 4))).isCloseTo(40 - 2 * (1 - Math.PI / 4), within(0.02));
    }

    @Test
    void a_gear_cutter_takes_the_trapezium_between_two_teeth() {
        // 4.5 deep, rim 1.5, flanks 20 degrees: mean width 1.5 + 4.5 tan 20
        double whole = 1.5 + 2 * 4.5 * Math.tan(20 * DEGREE);
        var shape = new EdgeShape.Flanked(30, 1.5, 20 * DEGREE);

        assertThat(section(upright(shape, 4.5, whole)))
                .isCloseTo(4.5 * (1.5 + 4.5 * Math.tan(20 * DEGREE)), withinPercentage(1));
    }

    @Test
    void the_head_of_a_t_slot_is_cut_at_its_two_sides_only() {
        var cutter = MillingCutter.square(21, 8, 0);

        ShapedCut head = ShapedCut.besideNeck(cutter, 12, 9, 0.03);
        MillingForce force = MillingForce.of(head, KienzleForce.of(new Kienzle(1350, 0.21), cutter));

        assertThat(head.removedPerTurn()).isCloseTo((21 - 12) * 9 * 8 * 0.03, withinPercentage(1e-6));
        assertThat(force.at(Math.PI / 2 - Math.PI / 8).resultant())
                .isLessThan(force.largest().force().resultant());
    }

    @Test
    void whatever_the_shape_the_torque_does_the_work_of_what_is_removed() {
        Rounds.each(50, (random, round) -> {
            double radius = random.nextDouble(3, 20);
            double depth = radius * random.nextDouble(0.1, 0.9);
            EdgeShape shape = switch (random.nextInt(4)) {
                case 0 -> new EdgeShape.Rounded(radius, radius);
                case 1 -> new EdgeShape.Rounded(radius, radius * random.nextDouble(0.05, 0.5));
                case 2 -> new EdgeShape.Conical(radius, random.nextDouble(-0.6, 1));
                default -> new EdgeShape.Hollow(radius, depth);
            };
            ShapedCut cut = random.nextBoolean() ? slot(shape, depth) : upright(shape, 0.6 * radius, depth);

            double torque = MillingForce.of(cut, FLAT).mean().torque();

            assertThat(torque * 2 * Math.PI).isCloseTo(2000 * cut.removedPerTurn(), withinPercentage(0.01));
        });
    }

    @Test
    void a_ball_pressed_into_the_work_feels_it_towards_the_spindle_and_a_dovetail_cutter_away_from_it() {
        var pushing = new KienzleForce(new Kienzle(2000, 0.2), 0.4, 0);

        assertThat(MillingForce.of(slot(new EdgeShape.Rounded(5, 5), 1), pushing)
                        .mean()
                        .axial())
                .isNegative();
        assertThat(MillingForce.of(upright(new EdgeShape.Conical(12, -30 * DEGREE), 3, 5), pushing)
                        .mean()
                        .axial())
                .isPositive();
    }

    /** The ball worked out without slices of ours: the edge walked by its own angle, Simpson over arc and edge. */
    @Test
    void the_forces_of_a_ball_in_a_groove_are_those_of_its_edge_walked_along() {
        Rounds.each(51, Math.max(5, Rounds.count(40) / 4), (random, round) -> {
            double radius = random.nextDouble(2, 12);
            double depth = radius * random.nextDouble(0.1, 1);
            var law = new KienzleForce(new Kienzle(random.nextDouble(500, 3000), random.nextDouble(0.1, 0.3)), 0.3, 0);
            var walked = new WalkedBall(radius, depth, 0.05, law);

            CutForce mean = MillingForce.of(slot(new EdgeShape.Rounded(radius, radius), depth), law)
                    .mean();

            double scale = Math.abs(mean.cross()) + Math.abs(mean.feed());
            assertThat(mean.feed()).isCloseTo(walked.mean(0, TEETH.teeth()), within(0.01 * scale));
            assertThat(mean.cross()).isCloseTo(walked.mean(1, TEETH.teeth()), within(0.01 * scale));
            assertThat(mean.axial()).isCloseTo(walked.mean(2, TEETH.teeth()), within(0.02 * scale));
            assertThat(mean.torque()).isCloseTo(walked.mean(3, TEETH.teeth()), withinPercentage(1));
        });
    }

    @Test
    void a_woodruff_cutter_sunk_half_its_diameter_cuts_over_its_whole_front() {
        Engagement half = Engagement.plunging(6, 24);

        assertThat(half.start()).isCloseTo(30 * DEGREE, within(1e-12));
        assertThat(half.exit()).isCloseTo(150 * DEGREE, within(1e-12));
        assertThat(Engagement.plunging(12, 24).arc()).isCloseTo(Math.PI, within(1e-9));
    }
}
