package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.shop.Kept;
import setwright.shop.Machine;

class PlaceChecksTest {
    @Test
    void a_position_that_only_the_worst_case_exceeds_is_a_note() {
        Caution note = PlaceCases.position("0.2").note("off-tolerance").orElseThrow();

        assertThat(note.figure().holds()).isTrue();
        assertThat(note.message()).contains("drift of the drill");
        assertThat(PlaceCases.position("0.4").note("off-tolerance")).isEmpty();
    }

    /** Edges are found to 0.0127 either way; found twice along two axes that is 0.0254 off the place found first. */
    @Test
    void a_head_moved_on_a_round_column_is_a_stop_only_where_finding_again_is_not_good_enough() {
        Bench moved = PlaceCases.headMoved(Machine.Column.ROUND);
        Caution loose = moved.found("xy-lost").get(0);
        Caution tight = new Bench(withPosition(moved.job(), "0.05"), moved.shop())
                .found("xy-lost")
                .get(0);

        assertThat(loose.severity()).isEqualTo(Severity.CAUTION);
        assertThat(tight.severity()).isEqualTo(Severity.STOP);
        assertThat(tight.figure().value()).isCloseTo(0.0254, within(1e-12));
        assertThat(tight.figure().limit()).isEqualTo(0.025);
        assertThat(moved.remedies(loose)).isNotEmpty();
    }

    private static Job withPosition(Job job, String mm) {
        return job.withPlan(
                job.plan().withFeatures(SmallJobs.bearingBlock(mm).plan().features()));
    }

    /** By hand: both axes' errors times √2, the drill's and the lean's once; the drift alone is over 60 % of 0.05. */
    @Test
    void what_a_dial_holds_at_this_depth_is_no_tenth_of_a_millimetre() {
        Caution off = PlaceCases.position("0.1").found("off-tolerance").get(0);
        double depth = Bench.of(SmallJobs.bearingBlock()).plan().part().operation("h1-drill").stream()
                .mapToDouble(stage -> stage.workTop() - stage.lowest())
                .sum();
        double edgeDialScaleBacklashStopWarmth = 0.0127 + 0.0127 + 0.0254 + 0.00762 + 0.0127 + 0.00508;
        double startDriftLean = 0.0254 + 0.001 * depth + depth / 6000;

        assertThat(off.figure().value())
                .isCloseTo(Math.sqrt(2) * edgeDialScaleBacklashStopWarmth + startDriftLean, within(1e-9));
        assertThat(off.figure().limit()).isEqualTo(0.05);
    }

    @Test
    void a_hole_whose_place_is_general_may_be_drilled_from_an_edge_that_is_cut_later() {
        Bench general = PlaceCases.fromEdge(Pattern.Datum.LEFT_LOW, null);

        assertThat(general.found("holding-face-gone"))
                .extracting(Caution::severity)
                .containsExactly(Severity.CAUTION);
        assertThat(PlaceCases.fromEdge(Pattern.Datum.LEFT_LOW).found("holding-face-gone"))
                .extracting(Caution::severity)
                .containsExactly(Severity.STOP);
    }

    @Test
    void the_face_cut_first_mends_a_hole_that_is_placed_from_it() {
        Bench bench = PlaceCases.fromEdge(Pattern.Datum.LEFT_LOW);

        assertThat(bench.remedies(bench.found("holding-face-gone").get(0)))
                .extracting(Remedy::text)
                .containsExactly("Take set-up s2, Left side up, before s1.");
    }

    @Test
    void a_part_that_is_found_by_its_edges_each_time_is_only_noted_to_go_in_both_ways() {
        assertThat(PlaceCases.twoSides(ZeroFinding.EDGES).note("loads-wrong-way-round"))
                .isPresent();
        assertThat(Cases.block().note("loads-wrong-way-round")).isEmpty();
    }

    @Test
    void a_deep_hole_without_a_spot_is_a_note() {
        Bench spotted = PlaceCases.deepHole("0.4");
        Bench unspotted = spotted.with(job -> job.withPlan(job.plan()
                .withSetUps(List.of(new SetUp(
                        "s1",
                        "Top side up",
                        Plannable.inked(Side.TOP),
                        0,
                        ViseHolding.pencilled(),
                        ZeroFinding.EDGES,
                        List.of(
                                Operation.pencilled("h1-drill", Operation.Kind.DRILL, List.of("h1")),
                                Operation.pencilled("h1-spot", Operation.Kind.SPOT, List.of("h1"))))))));

        assertThat(spotted.note("drill-wanders")).isEmpty();
        assertThat(unspotted.note("drill-wanders")).isPresent();
        assertThat(unspotted.found("order-broken")).hasSize(1);
    }

    @Test
    void a_spot_that_comes_again_to_break_the_edge_breaks_no_order() {
        Bench again = Cases.block()
                .with(job -> job.withPlan(job.plan()
                        .withSetUps(List.of(new SetUp(
                                "s1",
                                "Top side up",
                                Plannable.inked(Side.TOP),
                                0,
                                ViseHolding.pencilled(),
                                ZeroFinding.EDGES,
                                List.of(
                                        Operation.pencilled("o1", Operation.Kind.SPOT, List.of("h1", "h2")),
                                        Operation.pencilled("o2", Operation.Kind.DRILL, List.of("h2")),
                                        Operation.pencilled("o3", Operation.Kind.SPOT, List.of("h2"))))))));

        assertThat(again.found("order-broken")).isEmpty();
    }

    @Test
    void what_nobody_counted_is_one_line_and_no_caution() {
        Bench uncounted = PlaceCases.owned(Kept.NOT_COUNTED);

        assertThat(uncounted.found("not-in-shop")).isEmpty();
        assertThat(uncounted.note("not-in-shop").orElseThrow().message())
                .isEqualTo(
                        "Not counted yet (s1): Drill 6.8 mm, stub. Look whether they are there, and take the count.");
    }

    @Test
    void a_drill_that_is_not_there_is_changed_for_one_of_its_size() {
        Bench bench = PlaceCases.owned(0);

        assertThat(bench.remedies(bench.found("not-in-shop").get(0)))
                .extracting(Remedy::text)
                .containsExactly("Take the Drill 6.8 mm, jobber.");
    }

    /** 160 x 100 x 81 mm of steel of 7850 kg/m³ are 10.17 kg. */
    @Test
    void the_largest_blank_is_weighed() {
        Caution heavy = PlaceCases.heavy("80").found("overweight").get(0);

        assertThat(heavy.figure().value()).isCloseTo(10.17, within(0.01));
    }

    @Test
    void a_vise_that_is_not_bolted_on_is_lifted_for_this_job() {
        Bench bare = Cases.block()
                .with(job -> job.withPlan(job.plan()
                        .withMachine(new setwright.job.MachineAsItStands(SmallShop.MACHINE, List.of(), null))));

        assertThat(bare.found("overweight")).extracting(Caution::subject).containsExactly(SmallShop.VISE);
    }

    /** The part of 10.17 kg and a vise of 30 kg against a table that carries so much. */
    @Test
    void the_table_carries_the_part_and_what_holds_it_or_it_is_said() {
        double vise = SmallShop.shop()
                .row(SmallShop.VISE, setwright.shop.Vise.class)
                .orElseThrow()
                .mass()
                .inside();
        double all = vise + 160 * 100 * 81 * 7850e-9;

        assertThat(onTable(all + 0.1).found("overweight"))
                .extracting(Caution::subject)
                .doesNotContain("table");
        assertThat(onTable(all - 0.1).found("overweight"))
                .filteredOn(caution -> caution.subject().equals("table"))
                .singleElement()
                .satisfies(caution -> assertThat(caution.figure().value()).isCloseTo(all, within(1e-6)));
    }

    private static Bench onTable(double carries) {
        return PlaceCases.heavy("80").in(SmallShop.shop().with(List.of(SmallShop.carrying(carries + " kg"))));
    }

    @Test
    void a_copy_that_differs_says_in_what() {
        Caution changed = PlaceCases.carrying(SmallShop.viseWithFirm("12 kN"))
                .note("shop-row-changed")
                .orElseThrow();

        assertThat(changed.message()).contains(", in firm.");
    }

    @Test
    void a_drill_too_large_for_a_thread_is_noted_as_well_as_one_too_small() {
        Bench large = Cases.block().ink("h2-drill", OperationField.CUTTER, "drill-hss-jobber-10.0");

        assertThat(large.note("near-drill-size").orElseThrow().message()).contains("take the smaller drill");
        assertThat(PlaceCases.tapDrill("6.6")
                        .note("near-drill-size")
                        .orElseThrow()
                        .message())
                .contains("86 % of thread", "take the larger drill");
    }
}
