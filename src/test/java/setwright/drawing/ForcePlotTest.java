package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.cutting.Direction;
import setwright.cutting.ForcePolygon;
import setwright.cutting.Kienzle;
import setwright.cutting.KienzleForce;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingCutter;
import setwright.cutting.MillingForce;
import setwright.cutting.ShapedCut;
import setwright.cutting.UnevenTeeth;
import setwright.geometry.plane.Point2;

class ForcePlotTest {
    private static final MillingCutter CUTTER = MillingCutter.square(12, 4, 0.5);
    private static final ShapedCut CUT =
            ShapedCut.of(MillingCut.of(CUTTER, Direction.CLIMB, new MillingCut.Section(3, 10), 0.05));
    private static final KienzleForce LAW = KienzleForce.of(new Kienzle(1350, 0.21), CUTTER);

    private final Drawing plot = ForcePlot.of(
            ForcePolygon.of(MillingForce.of(CUT, LAW)),
            ForcePolygon.of(MillingForce.of(CUT, LAW, UnevenTeeth.worstRunningOut(4, 0.02, 0.05))),
            "900 N");

    private List<Point2> line(LineRole role) {
        return plot.all(Mark.Line.class).stream()
                .filter(line -> line.role() == role)
                .findFirst()
                .orElseThrow()
                .points();
    }

    private static double reach(List<Point2> line) {
        return line.stream().mapToDouble(Point2::length).max().orElse(0);
    }

    @Test
    void both_turns_close_and_the_larger_one_fills_the_plot() {
        for (LineRole role : List.of(LineRole.THIN, LineRole.VISIBLE)) {
            assertThat(line(role).get(0)).isEqualTo(line(role).get(line(role).size() - 1));
        }
        assertThat(reach(line(LineRole.VISIBLE))).isCloseTo(ForcePlot.REACH, within(1e-9));
        assertThat(reach(line(LineRole.THIN))).isLessThan(ForcePlot.REACH);
    }

    @Test
    void a_light_climb_cut_pulls_the_cutter_along_and_off_its_wall() {
        assertThat(line(LineRole.THIN)).anySatisfy(point -> {
            assertThat(point.x()).isPositive();
            assertThat(point.y()).isPositive();
        });
        assertThat(line(LineRole.THIN).stream().mapToDouble(Point2::y).min().orElseThrow())
                .isGreaterThan(-0.5 * ForcePlot.REACH);
    }

    @Test
    void nothing_is_drawn_outside_its_frame() {
        assertThat(plot.marks()).allSatisfy(mark -> {
            assertThat(mark.box().xLow()).isGreaterThanOrEqualTo(plot.extent().xLow() - 1e-9);
            assertThat(mark.box().yHigh()).isLessThanOrEqualTo(plot.extent().yHigh() + 1e-9);
        });
        assertThat(plot.all(Mark.CallOut.class))
                .singleElement()
                .satisfies(words -> assertThat(words.at().length()).isCloseTo(ForcePlot.REACH, within(1e-9)));
    }
}
