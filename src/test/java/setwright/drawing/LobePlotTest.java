package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.cutting.Engagement;
import setwright.geometry.plane.Point2;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.rigidity.stability.Mode;
import setwright.rigidity.stability.ToothCut;
import setwright.rigidity.stability.ZeroOrder;
import setwright.rigidity.stability.ZeroOrder.Lobe;

class LobePlotTest {
    private static final double FAST = 200;

    private static final Printing METRIC = new Printing(UnitSystem.METRIC);

    private static Drawing plot(double speed, double depth) {
        return LobePlot.of(lobes(), speed, depth, METRIC);
    }

    private static List<Lobe> lobes() {
        Mode mode = Mode.ofHertz(600, 0.03, 5000);
        var cut = new ToothCut(3, new Engagement(0, Math.PI / 2), 1800, 0.3);
        return ZeroOrder.of(cut, mode, mode).lobes(FAST, 5 * FAST, 200);
    }

    @Test
    void every_speed_has_a_place_on_the_border_and_none_lies_outside_the_plot() {
        Drawing plot = plot(2 * FAST, 0.2);

        Mark.Line border = plot.all(Mark.Line.class).get(0);
        assertThat(border.role()).isEqualTo(LineRole.VISIBLE);
        assertThat(border.points())
                .hasSize(200)
                .allMatch(at -> plot.extent().and(at).equals(plot.extent()));
    }

    @Test
    void a_pass_that_is_set_stands_below_the_border_where_it_is_quiet_and_above_where_it_rings() {
        Lobe lobe = lobes().get(50);

        assertThat(above(lobe, 0.9)).isNegative();
        assertThat(above(lobe, 1.1)).isPositive();
        assertThat(above(lobe, 1)).isCloseTo(0, within(1e-9));
    }

    private static double above(Lobe lobe, double share) {
        Drawing plot = plot(lobe.speed(), share * lobe.depth());
        Point2 set = plot.all(Mark.Round.class).get(0).centre();
        return set.y() - plot.all(Mark.Line.class).get(0).points().get(50).y();
    }

    @Test
    void axes_are_lettered_in_turns_and_millimetres() {
        Drawing plot = plot(FAST, 0.2);

        assertThat(plot.all(Mark.Text.class)).extracting(Mark.Text::text).contains("1910", "9549", "0", "depth, mm");
    }

    @Test
    void without_lobes_there_is_no_plot() {
        assertThat(LobePlot.of(List.of(), FAST, 1, METRIC).isEmpty()).isTrue();
    }
}
