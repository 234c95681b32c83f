package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.geometry.Nearest;
import setwright.geometry.Point3;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

class DrawingsTest {
    private static final Printing METRIC = new Printing(UnitSystem.METRIC);
    private static final Printing INCH = new Printing(UnitSystem.INCH);
    private static final Set<View> ALL = EnumSet.allOf(View.class);
    private static final Plan PLAN = Samples.plan();
    private static final Plan THICK = Samples.onThickParallels();

    @Test
    void every_mark_of_every_operation_lies_within_the_extent_wherever_the_tool_is() {
        for (Plan plan : List.of(PLAN, THICK, Samples.deep(), Samples.bottomed())) {
            for (String operation : operations(plan)) {
                for (double wind : new double[] {0, 0.1, 0.37, 0.5, 0.9, 1}) {
                    assertWithin(Bench.of(plan, new Place("s1", operation, wind), METRIC, ALL), operation);
                }
            }
        }
    }

    private static void assertWithin(Drawing drawing, String operation) {
        PlanBox extent = drawing.extent().grown(1e-6);
        assertThat(drawing.marks()).as(operation).isNotEmpty();
        assertThat(drawing.marks()).allSatisfy(mark -> {
            if (mark.kind() != Mark.Kind.TEXT) {
                assertThat(extent.and(mark.box())).as(operation).isEqualTo(extent);
            }
        });
    }

    @ParameterizedTest
    @EnumSource(View.class)
    void the_frame_stays_where_it_is_while_the_tool_is_wound_along(View view) {
        for (String operation : operations(PLAN)) {
            PlanBox first = one(view, PLAN, operation, 0).extent();
            for (double wind = 0.05; wind < 1; wind += 0.1) {
                assertThat(one(view, PLAN, operation, wind).extent())
                        .as(operation + " at " + wind)
                        .isEqualTo(first);
            }
        }
    }

    @Test
    void every_line_every_hatch_and_every_fill_is_used() {
        Set<LineRole> lines = EnumSet.noneOf(LineRole.class);
        Set<Hatch> hatches = EnumSet.noneOf(Hatch.class);
        Set<Fill> fills = EnumSet.noneOf(Fill.class);
        for (String operation : operations(THICK)) {
            Drawing drawing = Bench.of(THICK, new Place("s1", operation, 0.3), METRIC, ALL);
            drawing.all(Mark.Line.class).forEach(line -> lines.add(line.role()));
            drawing.all(Mark.Hatched.class).forEach(hatched -> hatches.add(hatched.hatch()));
            drawing.all(Mark.Shape.class).forEach(shape -> fills.add(shape.fill()));
        }
        assertThat(lines).containsAll(EnumSet.allOf(LineRole.class));
        // Nothing but a vise holds parts yet.
        assertThat(hatches).isEqualTo(EnumSet.complementOf(EnumSet.of(Hatch.OTHER)));
        assertThat(fills).isEqualTo(EnumSet.complementOf(EnumSet.of(Fill.OTHER_FIXTURE)));
    }

    @Test
    void a_set_up_that_is_not_there_draws_nothing() {
        assertThat(Bench.of(PLAN, new Place("s9"), METRIC, ALL)).isEqualTo(Drawing.EMPTY);
        assertThat(Thumbnail.of(PLAN, "s9")).isEqualTo(Drawing.EMPTY);
    }

    @Test
    void without_an_operation_the_blank_stands_there_and_no_tool() {
        Drawing drawing = FrontView.of(PLAN, new Place("s1"), METRIC);

        assertThat(fills(drawing)).contains(Fill.PART).doesNotContain(Fill.CUTTER, Fill.HOLDER, Fill.QUILL);
        assertThat(rungs(drawing))
                .contains("table 0.00", "blank top, largest 145.75")
                .noneMatch(rung -> rung.contains("tool"));
    }

    /** Table 0, bed 73 and jaw 44 of the vise row, parallels 1-1/4 in, blank 40 + 1, finished 38: added by hand. */
    @Test
    void the_ladder_names_every_level_from_table_to_nose_with_its_height() {
        Drawing drawing = FrontView.of(PLAN, new Place("s1", "f1-face", 0), METRIC);

        assertThat(rungs(drawing))
                .containsExactly(
                        "table 0.00",
                        "vise bed 73.00",
                        "top of parallels 104.75",
                        "jaw top 117.00",
                        "finished top 142.75",
                        "blank top, largest 145.75",
                        "tool point 155.75",
                        "holder face 195.75",
                        "spindle nose 220.75");
        assertThat(drawing.all(Mark.Ladder.class))
                .singleElement()
                .satisfies(ladder ->
                        assertThat(ladder.rungs()).extracting(Mark.Rung::y).isSorted());
    }

    @Test
    void the_blanks_top_is_off_the_ladder_once_it_is_cut_away() {
        Drawing drawing = FrontView.of(PLAN, new Place("s1", "h2-drill", 0), METRIC);

        assertThat(rungs(drawing)).noneMatch(rung -> rung.startsWith("blank top"));
    }

    @Test
    void inch_people_read_inches() {
        Drawing drawing = FrontView.of(PLAN, new Place("s1", "f1-face", 0), INCH);

        assertThat(rungs(drawing)).contains("top of parallels 4.124", "table 0.000");
        assertThat(drawing.all(Mark.Ladder.class).get(0).unit()).isEqualTo("over table, in");
    }

    @Test
    void what_touches_is_hatched_and_called_out_with_its_figure() {
        Drawing drawing = Bench.of(THICK, new Place("s1", "h2-drill", 0), METRIC, ALL);

        assertThat(hatches(drawing)).contains(Hatch.TOUCH);
        assertThat(drawing.all(Mark.CallOut.class))
                .extracting(Mark.CallOut::text)
                .containsExactly("3.0 mm into front parallel", "3.0 mm into back parallel");
    }

    @Test
    void where_nothing_touches_nothing_is_called_out_and_the_least_clearance_is_dimensioned() {
        Drawing drawing = Bench.of(PLAN, new Place("s1", "h2-drill", 0), METRIC, ALL);

        assertThat(hatches(drawing)).doesNotContain(Hatch.TOUCH);
        assertThat(drawing.all(Mark.CallOut.class)).isEmpty();
        assertThat(drawing.all(Mark.Dimension.class))
                .extracting(Mark.Dimension::text)
                .containsExactlyInAnyOrder("84 mm out", "4.4 mm to front parallel");
    }

    /** From the hole's edge, 15 + 3.4 from the middle, to the parallel, 26 - 3.175 from it. */
    @Test
    void the_dimension_of_the_least_clearance_is_as_long_as_the_clearance() {
        Drawing drawing = SideView.of(PLAN, new Place("s1", "h2-drill", 0), METRIC);

        Mark.Dimension least = drawing.all(Mark.Dimension.class).get(0);
        assertThat(least.from().distance(least.to())).isCloseTo(26 - 3.175 - 15 - 3.4, within(1e-9));
    }

    @Test
    void a_close_place_is_drawn_larger_in_a_circle_round_the_dimension() {
        Drawing drawing = Bench.of(PLAN, new Place("s1", "h2-drill", 0), METRIC, ALL);

        assertThat(drawing.all(Mark.Detail.class)).singleElement().satisfies(detail -> {
            Mark.Dimension least = drawing.all(Mark.Dimension.class).stream()
                    .filter(dimension -> dimension.text().startsWith("4.4"))
                    .findFirst()
                    .orElseThrow();
            assertThat(detail.centre().distance(least.from())).isLessThan(detail.radius());
            assertThat(detail.centre().distance(least.to())).isLessThan(detail.radius());
            assertThat(detail.times()).isGreaterThan(2);
        });
        assertThat(Bench.of(PLAN, new Place("s1", "f1-face", 0), METRIC, ALL).all(Mark.Detail.class))
                .as("25 mm are not close")
                .isEmpty();
    }

    @Test
    void the_stick_out_on_the_drawing_is_the_one_of_the_plan() {
        Drawing longer = FrontView.of(Samples.withDrillOut("95"), new Place("s1", "h2-drill", 0), METRIC);

        assertThat(longer.all(Mark.Dimension.class))
                .extracting(Mark.Dimension::text)
                .contains("95 mm out");
        assertThat(longer).isNotEqualTo(FrontView.of(PLAN, new Place("s1", "h2-drill", 0), METRIC));
    }

    @Test
    void the_front_view_and_the_plan_under_it_have_one_scale_across() {
        Drawing front = FrontView.of(PLAN, new Place("s1", "h2-drill", 0.3), METRIC);
        Drawing plan = TopView.of(PLAN, new Place("s1", "h2-drill", 0.3), METRIC);

        assertThat(box(front, Fill.PART).xLow())
                .isEqualTo(box(plan, Fill.PART).xLow())
                .isEqualTo(-41);
        assertThat(box(front, Fill.PART).xHigh())
                .isEqualTo(box(plan, Fill.PART).xHigh())
                .isEqualTo(41);
    }

    /** The machinist stands at the right of the view from the left end: so does the moving jaw. */
    @Test
    void the_view_from_the_left_end_has_the_solid_jaw_at_its_left() {
        Drawing side = SideView.of(PLAN, new Place("s1"), METRIC);

        List<PlanBox> jaws = side.all(Mark.Shape.class).stream()
                .filter(shape -> shape.fill() == Fill.JAW)
                .map(Mark.Shape::box)
                .toList();
        assertThat(jaws).extracting(PlanBox::xLow).containsExactlyInAnyOrder(-42.0, 26.0);
        assertThat(hatches(side)).contains(Hatch.JAW, Hatch.PACKING, Hatch.PART, Hatch.VISE);
    }

    @Test
    void holes_that_are_there_are_open_from_above_and_bear_their_numbers() {
        Drawing plan = TopView.of(PLAN, new Place("s1", "h2-tap", 0), METRIC);

        assertThat(plan.all(Mark.Round.class).stream().filter(round -> round.fill() == Fill.OPEN))
                .extracting(Mark.Round::centre)
                .contains(new Point2(0, 0), new Point2(-28, -15), new Point2(28, 15));
        assertThat(plan.all(Mark.Text.class)).extracting(Mark.Text::text).containsExactly("2", "3", "4", "5");
    }

    @Test
    void the_small_picture_shows_the_part_with_its_five_holes() {
        Drawing picture = Thumbnail.of(PLAN, "s1");

        assertThat(fills(picture)).contains(Fill.PART);
        assertThat(picture.all(Mark.Shape.class).stream().filter(shape -> shape.fill() == Fill.OPEN))
                .hasSize(5);
        // 82 long, 38 high, 52 deep, set back by 0.42 and 0.36 of it
        assertThat(picture.extent().length()).isCloseTo(82 + 0.42 * 52, within(1e-6));
        assertThat(picture.extent().depth()).isCloseTo(38 + 0.36 * 52, within(1e-6));
    }

    @Test
    void winding_goes_from_start_to_end_and_finds_the_tightest_place() {
        OperationStage on = PLAN.part().operation("h2-drill").orElseThrow();
        Winding winding = new Winding(on.path());
        Nearest nearest =
                PLAN.room().operation("h2-drill").orElseThrow().touches().get(0);

        assertThat(winding.at(0)).isEqualTo(on.path().start());
        assertThat(winding.at(1).distance(on.path().end())).isLessThan(1e-9);
        Point3 there = winding.at(winding.of(nearest));
        assertThat(there.distance(nearest.place().toolPoint())).isLessThan(1e-6);
    }

    private static List<String> operations(Plan plan) {
        return plan.part().setUp("s1").orElseThrow().operations().stream()
                .map(OperationStage::operation)
                .toList();
    }

    private static Drawing one(View view, Plan plan, String operation, double wind) {
        return Bench.of(plan, new Place("s1", operation, wind), METRIC, EnumSet.of(view));
    }

    private static Set<Fill> fills(Drawing drawing) {
        Set<Fill> fills = EnumSet.noneOf(Fill.class);
        drawing.all(Mark.Shape.class).forEach(shape -> fills.add(shape.fill()));
        return fills;
    }

    private static Set<Hatch> hatches(Drawing drawing) {
        Set<Hatch> hatches = EnumSet.noneOf(Hatch.class);
        drawing.all(Mark.Hatched.class).forEach(hatched -> hatches.add(hatched.hatch()));
        return hatches;
    }

    private static List<String> rungs(Drawing drawing) {
        List<String> rungs = new ArrayList<>();
        Stream<Mark.Ladder> ladders = drawing.all(Mark.Ladder.class).stream();
        ladders.flatMap(ladder -> ladder.rungs().stream())
                .forEach(rung -> rungs.add(rung.name() + " " + rung.figure()));
        return rungs;
    }

    private static PlanBox box(Drawing drawing, Fill fill) {
        return drawing.all(Mark.Shape.class).stream()
                .filter(shape -> shape.fill() == fill)
                .map(Mark.Shape::box)
                .reduce(PlanBox.EMPTY, PlanBox::and);
    }
}
