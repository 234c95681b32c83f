package setwright.rigidity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.cutting.Direction;
import setwright.cutting.Kienzle;
import setwright.cutting.KienzleForce;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingCutter;
import setwright.cutting.MillingForce;

/** Which way a wall is left out, after what textbooks say of climb and conventional cuts (from memory). */
class WallLeftTest {
    private static final Kienzle STEEL = new Kienzle(1800, 0.25);

    @Test
    void a_climb_cut_leaves_metal_on_its_wall() {
        Rounds.each(821, (random, round) -> {
            double width = random.nextDouble(0.2, 6);
            double depth = random.nextDouble(8, 20);

            assertThat(left(Direction.CLIMB, width, depth, 35).farthest()).isPositive();
        });
    }

    @Test
    void a_conventional_cut_of_half_the_cutter_digs_into_its_wall() {
        assertThat(left(Direction.CONVENTIONAL, 6, 12, 35).farthest()).isNegative();
    }

    @Test
    void less_stick_out_leaves_less() {
        Rounds.each(822, (random, round) -> {
            double out = random.nextDouble(30, 60);

            assertThat(left(Direction.CLIMB, 1, 10, out + 5).farthest())
                    .isGreaterThan(left(Direction.CLIMB, 1, 10, out).farthest());
        });
    }

    private static WallLeft left(Direction direction, double width, double depth, double out) {
        MillingCutter cutter = MillingCutter.square(12, 4, StrictMath.toRadians(30));
        MillingCut cut = MillingCut.of(cutter, direction, new MillingCut.Section(width, depth), 0.05);
        MillingForce force = MillingForce.of(cut, KienzleForce.of(STEEL, cutter));
        double wall = direction == Direction.CLIMB ? WallLeft.CLIMB : WallLeft.CONVENTIONAL;
        MountedTool tool = new MountedTool(FlutedTool.endMill(12, 26, 12).beam(out, 210000), Springs.ofMachine(10000));
        return WallLeft.of(force, cut, wall, tool, out - depth / 2);
    }
}
