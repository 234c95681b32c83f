package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.batch.Batch;
import setwright.batch.BatchTime;
import setwright.plan.Plan;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

class PlotsTest {
    private static final Printing METRIC = new Printing(UnitSystem.METRIC);
    private static final Plan PLAN = Samples.plan();

    @Test
    void a_milled_line_has_its_force_and_a_hole_with_a_place_its_error_budget() {
        assertThat(Plots.of(PLAN, "f1-face", METRIC)).containsKeys(Plot.FORCE, Plot.QUANTITY);

        Map<Plot, Drawing> hole = Plots.of(PLAN, "h1-drill", METRIC);
        assertThat(hole).doesNotContainKey(Plot.FORCE).containsKey(Plot.BUDGET);
    }

    @Test
    void a_line_that_is_no_operation_has_the_time_of_the_batch_alone() {
        assertThat(Plots.of(PLAN, "part", METRIC)).containsOnlyKeys(Plot.QUANTITY);
    }

    @Test
    void every_plot_says_over_itself_what_it_shows() {
        Plots.of(PLAN, "h1-drill", METRIC)
                .forEach((plot, drawing) -> assertThat(drawing.all(Mark.Text.class))
                        .anyMatch(text -> text.lettering() == Mark.Lettering.PLAIN
                                && text.text().startsWith(plot.words())));
    }

    @Test
    void no_bar_of_a_budget_is_longer_than_the_worst_case_and_the_limit_stands_where_it_is_allowed() {
        Drawing plot = Plots.of(PLAN, "h1-drill", METRIC).get(Plot.BUDGET);

        List<Mark.Shape> bars = plot.all(Mark.Shape.class);
        double worst = bars.get(bars.size() - 1).box().xHigh();
        assertThat(bars).allMatch(bar -> bar.box().xHigh() <= worst + 1e-9);
        assertThat(plot.all(Mark.Text.class)).anyMatch(text -> text.text().startsWith("allowed "));
    }

    @Test
    void the_lines_of_a_batch_cross_where_both_orders_take_alike() {
        Batch batch = new Batch(5, 4, 90, 60, 300, 600);
        double load = BatchTime.switchPoint(5, 4, 90);
        Batch alike = new Batch(5, 4, 90, load, 300, 600);

        Drawing plot = BatchPlot.of(List.of(alike), METRIC);

        List<Mark.Line> lines = plot.all(Mark.Line.class);
        int parts = 5;
        assertThat(lines.get(0).points().get(parts - 1).y())
                .isCloseTo(lines.get(1).points().get(parts - 1).y(), within(1e-9));
        assertThat(BatchPlot.of(List.of(batch), METRIC).all(Mark.CallOut.class))
                .extracting(Mark.CallOut::text)
                .containsExactly("5 off: " + METRIC.of(Measure.TIME, BatchTime.eachPartComplete(batch)));
    }

    @Test
    void without_set_ups_there_is_no_time_to_plot() {
        assertThat(BatchPlot.of(List.of(), METRIC).isEmpty()).isTrue();
    }
}
