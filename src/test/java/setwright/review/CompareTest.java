package setwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.caution.Bench;
import setwright.caution.Caution;
import setwright.caution.SmallJobs;
import setwright.caution.SmallShop;
import setwright.geometry.Side;
import setwright.job.Edits;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.ViseField;
import setwright.job.ViseHolding.GripAsked;
import setwright.quantity.Typed;
import setwright.shop.Shop;

class CompareTest {
    private static final Bench BLOCK = Bench.of(SmallJobs.bearingBlock());

    private static List<Change> between(Bench old, Bench changed) {
        return Compare.of(old.plan(), old.findings(), changed.plan(), changed.findings());
    }

    private static List<String> lines(List<Change> changes) {
        return changes.stream()
                .map(change -> change.where() + " " + change.what() + ": " + change.before() + " -> " + change.now())
                .toList();
    }

    @Test
    void a_plan_does_not_differ_from_itself() {
        assertThat(between(BLOCK, BLOCK)).isEmpty();
    }

    @Test
    void a_changed_stick_out_is_told_at_its_operation_with_what_follows() {
        Bench longer = BLOCK.ink("h2-tap", OperationField.STICK_OUT, SmallJobs.mm("68 mm"));

        assertThat(lines(between(BLOCK, longer))).contains("s1/h2-tap stickOut: 65 mm -> 68 mm");
        assertThat(between(BLOCK, longer))
                .allMatch(change -> change.effect().added().isEmpty());
    }

    @Test
    void inking_what_the_pencil_had_is_told_by_the_standing() {
        Bench inked = BLOCK.ink(ViseField.GRIP, GripAsked.FIRM);

        assertThat(lines(between(BLOCK, inked))).containsExactly("s1/holding grip: firm, pencilled -> firm, inked");
    }

    @Test
    void a_stop_that_is_new_stands_with_the_packing_that_brought_it_and_clears_when_undone() {
        Bench thick = BLOCK.ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .ink(ViseField.PARALLEL_INSET, SmallJobs.mm("2 mm"));

        assertThat(between(BLOCK, thick))
                .filteredOn(change -> change.where().equals("s1/holding"))
                .hasSize(3)
                .allSatisfy(change -> assertThat(change.effect().added())
                        .extracting(Caution::slug)
                        .containsExactly("drill-meets-parallel"));
        assertThat(between(thick, BLOCK))
                .filteredOn(change -> change.what().equals("parallels"))
                .singleElement()
                .satisfies(change -> assertThat(change.effect().cleared())
                        .extracting(Caution::slug)
                        .containsExactly("drill-meets-parallel"));
    }

    @Test
    void time_falls_on_the_operation_that_takes_longer() {
        Bench slower = BLOCK.ink("f1-face", OperationField.FEED, SmallJobs.feed("165 mm/min"));
        double longer = slower.plan().time().operation("f1-face").orElseThrow().cutting()
                - BLOCK.plan().time().operation("f1-face").orElseThrow().cutting();

        assertThat(between(BLOCK, slower))
                .singleElement()
                .satisfies(change -> assertThat(change.effect().time()).isCloseTo(longer, within(1e-6)));
    }

    @Test
    void a_feature_that_came_is_one_change_and_so_is_its_operation() {
        Bench fewer = BLOCK.with(job ->
                job.withPlan(job.plan().withFeatures(job.plan().features().subList(0, 2))));

        assertThat(between(fewer, BLOCK))
                .filteredOn(change -> change.what().equals(Change.ALL))
                .extracting(Change::where)
                .containsExactly("h2", "s1/h2-drill", "s1/h2-tap");
        assertThat(between(BLOCK, fewer))
                .filteredOn(change -> change.what().equals(Change.ALL))
                .allMatch(change -> change.now().equals(Change.NOTHING));
    }

    @Test
    void a_set_up_that_came_is_one_change_with_all_that_is_in_it() {
        Bench turned = BLOCK.with(job -> job.withPlan(job.plan().withFeatures(withBottomFaced(job))));

        assertThat(between(BLOCK, turned))
                .filteredOn(change -> change.where().startsWith("s2"))
                .singleElement()
                .satisfies(change -> assertThat(change.now()).startsWith("Bottom side up"));
    }

    @Test
    void another_order_of_operations_is_told() {
        Bench written = BLOCK.with(job -> Edits.inkAll(BLOCK.plan().drawnUp(), "f1-face"));
        Bench turned = written.with(CompareTest::drillsTurned);

        assertThat(lines(between(written, turned)))
                .contains("s1 order of operations: f1-face, s1-spot, h1-drill, h2-drill, h1-ream, h2-tap"
                        + " -> f1-face, s1-spot, h2-drill, h1-drill, h1-ream, h2-tap");
    }

    private static Job drillsTurned(Job job) {
        SetUp setUp = job.plan().setUps().get(0);
        List<Operation> operations = new ArrayList<>(setUp.operations());
        Collections.swap(operations, 2, 3);
        return job.withPlan(job.plan().withSetUps(List.of(setUp.withOperations(operations))));
    }

    @Test
    void a_shop_row_that_changed_is_told_by_its_value() {
        Shop other = SmallShop.shop().with(List.of(SmallShop.viseWithFirm("17 kN")));

        assertThat(lines(between(BLOCK, BLOCK.in(other)))).containsExactly("shop/vise-6in firm: 15 kN -> 17 kN");
    }

    @Test
    void a_row_that_is_used_no_more_is_said_by_the_operation_only() {
        Bench other = BLOCK.ink("h2-drill", OperationField.CUTTER, "drill-hss-stub-6.8");

        assertThat(between(BLOCK, other)).noneMatch(change -> change.where().startsWith("shop/"));
        assertThat(lines(between(BLOCK, other)))
                .contains("s1/h2-drill cutter: drill-hss-jobber-6.8 -> drill-hss-stub-6.8");
    }

    @Test
    void number_off_and_the_blank_are_told_at_the_job() {
        Bench more = BLOCK.with(job -> job.withPlan(job.plan().withNumberOff(20)));

        assertThat(lines(between(BLOCK, more))).containsExactly(" numberOff: 12 -> 20");
    }

    @Test
    void what_is_left_to_nobody_falls_on_all() {
        Bench steel = BLOCK.with(job -> job.withPlan(job.plan().withMaterial("aluminium-6061")));

        assertThat(lines(between(BLOCK, steel))).contains(" material: mild-steel -> aluminium-6061");
        Typed<?> speed = steel.plan()
                .drawnUp()
                .setUps()
                .get(0)
                .operations()
                .get(0)
                .speed()
                .value();
        assertThat(lines(between(BLOCK, steel))).contains("s1/f1-face speed: 660 rev/min -> " + speed.text());
    }

    private static List<Feature> withBottomFaced(Job job) {
        List<Feature> all = new ArrayList<>(job.plan().features());
        Size across = ((Face) all.get(0)).across();
        all.add(new Face("f9", "", Side.BOTTOM, across, null, GotBy.DIAL));
        return all;
    }
}
