package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.DrawnTable;
import setwright.job.Edge;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.job.Plannable;
import setwright.job.Plate;
import setwright.job.RouteEdits;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.Step;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.job.ZeroFinding;
import setwright.plan.BearingBlock;
import setwright.plan.Plan;
import setwright.plan.part.StrapPlace;
import setwright.plan.part.TableCover;
import setwright.quantity.Length;
import setwright.quantity.Printing;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.sheet.OnTable;
import setwright.shop.Shop;

/** A plate of 600 x 300 x 25 on the table of a knee mill, 9 in wide: what the plan says of it, and the ways it finds. */
class BasePlateTest {
    private static final Reading READING = new Reading(UnitSystem.METRIC);
    private static final Shop SHOP = BearingBlock.shop();

    private static Typed<Length> mm(double mm) {
        return READING.length(mm + " mm");
    }

    private static Size size(double mm) {
        return Size.of(mm(mm));
    }

    private static Feature holes(double apartU, double apartV) {
        Pattern grid =
                new Pattern.Grid(Pattern.Datum.CENTRE, new Pattern.Place(mm(0), mm(0)), 2, 2, mm(apartU), mm(apartV));
        return new Hole("hole1", "", Side.TOP, Hole.Make.PLAIN, size(14), null, null, null, grid, null, GotBy.TOOL);
    }

    private static Feature face() {
        return new Face("face1", "", Side.TOP, size(24), null, GotBy.DIAL);
    }

    private static Feature step(String id, Edge edge) {
        return new Step(id, "", Side.TOP, edge, size(30), size(5), null, null, GotBy.DIAL);
    }

    private static Job job(List<SetUp> setUps, Feature... features) {
        Job block = BearingBlock.job();
        return block.withPlan(block.plan()
                .withBlank(new Plate(size(600), size(300), size(25), Map.of()))
                .withRelations(List.of())
                .withReceived(List.of())
                .withFeatures(List.of(features))
                .withSetUps(setUps));
    }

    private static Bench bench(Feature... features) {
        return Bench.of(job(List.of(), features)).in(SHOP);
    }

    private static SetUp setUp(String id, Operation... operations) {
        return new SetUp(
                id, id, Plannable.inked(Side.TOP), 0, TableHolding.pencilled(), ZeroFinding.EDGES, List.of(operations));
    }

    private static Operation operation(String id, Operation.Kind kind, String feature) {
        return Operation.pencilled(id, kind, List.of(feature));
    }

    /** 9 in are 228.6 mm: 35.7 over the front and the back. 600 · 300 · 25 · 7.85 = 35.3 kg. Holes 500 apart want 500 of X. */
    @Test
    void the_plan_says_that_it_hides_the_slots_overhangs_wants_more_x_than_some_machines_have_and_weighs_35_kg() {
        Bench bench = bench(holes(500, 127));
        Plan plan = bench.plan();
        TableCover cover = TableCover.of(plan.part().setUps().get(0), plan.rows());
        assertThat(cover.hidesAll()).isTrue();
        assertThat(cover.front()).isCloseTo(35.7, org.assertj.core.api.Assertions.within(0.05));
        assertThat(cover.mass()).isCloseTo(35.3, org.assertj.core.api.Assertions.within(0.1));
        assertThat(cover.travel()).isCloseTo(500, org.assertj.core.api.Assertions.within(1e-6));
        assertThat(cover.tooShort()).contains("Bench mill, Morse 3").doesNotContain("Knee mill R8, 9 x 49 in");
        String said = new OnTable(plan, plan.drawnUp().setUps().get(0), new Printing(UnitSystem.METRIC)).cover();
        assertThat(said).contains("hides all 3 T-slots", "35.7 mm beyond the front", "35.3 kg", "500 mm of X");
        assertThat(bench.found("overweight")).hasSize(1);
    }

    /** Straps over the ends, every heel level or less than a step of 1/16 in high, every thread at least a diameter. */
    @Test
    void drilled_plates_are_strapped_over_their_ends_and_nothing_stops_them() {
        Bench bench = bench(holes(500, 127));
        Plan plan = bench.plan();
        assertThat(stops(bench)).isEmpty();
        List<StrapPlace> straps = straps(plan, 0);
        assertThat(straps).hasSizeGreaterThanOrEqualTo(2).allSatisfy(strap -> {
            assertThat(strap.by()).isEqualTo(Strapping.By.STRAP);
            assertThat(strap.drawn().heelOver().value().inside()).isBetween(0.0, 1.6);
            assertThat(Math.abs(strap.toward().x())).isEqualTo(1);
        });
        for (String slug : List.of(
                "clamp-over-air",
                "heel-low",
                "stud-too-short",
                "no-slot-under-stud",
                "clamp-on-the-cut",
                "slides-in-grip",
                "lifts-in-grip",
                "tips-in-grip",
                "slot-overloaded")) {
            assertThat(bench.found(slug)).as(slug).isEmpty();
        }
    }

    @Test
    void where_the_whole_top_is_cut_straps_are_in_the_way_and_a_clamping_of_its_own_is_found() {
        Bench bench = bench(face(), holes(500, 127));
        List<Caution> covered = bench.found("clamp-on-the-cut");
        assertThat(covered).hasSize(1);
        assertThat(bench.remedies(covered.get(0)))
                .anyMatch(remedy -> remedy.text().contains("in a clamping of its own"));
        Job split = RouteEdits.clampedAnew(bench.plan().drawnUp(), "s1", List.of("face1-face"))
                .job();
        Bench after = Bench.of(split).in(SHOP);
        assertThat(stops(after)).isEmpty();
        Plan plan = after.plan();
        assertThat(plan.drawnUp().setUps()).hasSize(2);
        assertThat(straps(plan, 0)).hasSize(4).allMatch(one -> one.by() == Strapping.By.EDGE_CLAMP);
        assertThat(straps(plan, 1)).allMatch(one -> one.by() == Strapping.By.STRAP);
        assertThat(plan.hold().operation("face1-face").orElseThrow().factor().expected())
                .isGreaterThan(2);
    }

    /** Both ends stepped: first the holes under straps, then bolts through the holes, their slots 127 apart. */
    @Test
    void where_the_ends_are_cut_it_is_bolted_through_its_own_holes_once_they_are_drilled() {
        Job two = job(
                List.of(
                        setUp("s1", operation("o1", Operation.Kind.DRILL, "hole1")),
                        setUp(
                                "s2",
                                operation("o2", Operation.Kind.STEP, "step1"),
                                operation("o3", Operation.Kind.STEP, "step2"))),
                holes(400, 127),
                step("step1", Edge.LEFT),
                step("step2", Edge.RIGHT));
        Bench bench = Bench.of(two).in(SHOP);
        Plan plan = bench.plan();
        assertThat(straps(plan, 1)).hasSize(4).allMatch(one -> one.by() == Strapping.By.BOLT);
        for (String slug : List.of(
                "no-hole-for-bolt",
                "no-slot-under-stud",
                "clamp-over-air",
                "clamp-on-the-cut",
                "cutter-meets-clamp",
                "slides-in-grip",
                "lifts-in-grip",
                "tips-in-grip")) {
            assertThat(bench.found(slug)).as(slug).isEmpty();
        }
        assertThat(((DrawnTable) plan.drawnUp().setUps().get(1).holding()).straps())
                .allMatch(strap -> strap.strap().value().equals("none"));
    }

    @Test
    void a_bolt_through_a_hole_that_is_not_drilled_yet_is_not_run() {
        TableHolding bolted = TableHolding.pencilled()
                .withStraps(List.of(setwright.job.StrapField.BY.write(
                        Strapping.pencilled("a"), Plannable.inked(Strapping.By.BOLT))));
        Job job = job(List.of(setUp("s1").withHolding(bolted)), holes(400, 127));
        assertThat(Bench.of(job).in(SHOP).found("no-hole-for-bolt"))
                .singleElement()
                .extracting(Caution::severity)
                .isEqualTo(Severity.STOP);
    }

    private static List<Caution> stops(Bench bench) {
        return bench.findings().cautions().stream()
                .filter(caution -> caution.severity() == Severity.STOP)
                .toList();
    }

    private static List<StrapPlace> straps(Plan plan, int setUp) {
        return StrapPlace.all(
                ((DrawnTable) plan.drawnUp().setUps().get(setUp).holding()).straps(),
                plan.part().setUps().get(setUp).heights(),
                plan.rows());
    }
}
