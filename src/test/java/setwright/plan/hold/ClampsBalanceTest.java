package setwright.plan.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static setwright.plan.HoldingJobs.setUp;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.holding.Outlook;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.Blank;
import setwright.job.Feature;
import setwright.job.Holding;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.HoldingJobs;
import setwright.plan.HoldingShop;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.EdgeClamp;
import setwright.shop.Kept;
import setwright.shop.Shop;
import setwright.shop.ShopRow;
import setwright.shop.VeeJaws;

/** What vises in pairs, V-grooved jaws, bolts and clamps on the edges bear, by hand; M12 at 42 N·m pulls 17.5 kN. */
class ClampsBalanceTest {
    private static final Percentage ONE_HUNDREDTH = Percentage.withPercentage(1);
    private static final Kept KEPT = new Kept("drawer 4", 4);
    private static final String SOURCE = "common practice: round sizes for a test";

    private static Shop shop() {
        List<ShopRow> more = List.of(
                new EdgeClamp(
                        "edge",
                        "Edge clamps",
                        HoldingShop.length("75 mm"),
                        HoldingShop.length("40 mm"),
                        HoldingShop.length("20 mm"),
                        HoldingShop.length("30 mm"),
                        HoldingShop.length("10 mm"),
                        HoldingShop.READING.ratio("0.5"),
                        HoldingShop.READING.ratio("0.25"),
                        4,
                        KEPT,
                        SOURCE),
                new VeeJaws(
                        "vees-6in",
                        "V-grooved jaws",
                        HoldingShop.length("152 mm"),
                        HoldingShop.length("44 mm"),
                        HoldingShop.length("30 mm"),
                        HoldingShop.angle("90 deg"),
                        HoldingShop.length("8 mm"),
                        HoldingShop.length("38 mm"),
                        HoldingShop.length("26 mm"),
                        KEPT,
                        SOURCE));
        return HoldingShop.shop().with(more);
    }

    private static Plan plan(Blank blank, Side up, int turns, Holding holding, Feature... features) {
        Job job = HoldingJobs.job(blank, List.of(features), List.of(setUp(up, turns, holding)));
        return Planner.plan(job, shop());
    }

    private static double held(Plan plan, Vector at, Vector direction) {
        Load load = Load.force("push", at, direction.times(1000));
        return 1000
                * Balances.of(
                                plan.drawnUp().setUps().get(0),
                                plan.part().setUps().get(0),
                                plan.rows())
                        .orElseThrow()
                        .answer(Outlook.EXPECTED, List.of(load))
                        .factor();
    }

    private static <T> ViseHolding with(ViseHolding holding, ViseField<T> field, T value) {
        return field.write(holding, Plannable.inked(value));
    }

    private static ViseHolding sixInch() {
        ViseHolding vise = with(ViseHolding.pencilled(), ViseField.VISE, "vise-6in");
        return with(vise, ViseField.PARALLELS, ViseHolding.NONE);
    }

    /** 15 kN in each: 2 · 2 · 0.15 · 15 000 = 9000 N along the jaws. */
    @Test
    void two_vises_hold_long_work_with_the_grip_of_both() {
        Plan plan =
                plan(HoldingJobs.block("600 mm", "50 mm", "50 mm"), Side.TOP, 0, with(sixInch(), ViseField.VISES, 2));
        assertThat(held(plan, new Vector(300, 25, 22), Vector.RIGHT)).isCloseTo(9000, ONE_HUNDREDTH);
        assertThat(plan.part().setUps().get(0).fixtures())
                .extracting(body -> body.name())
                .contains("left solid jaw", "right solid jaw");
        double apart = ((setwright.job.DrawnVise) plan.drawnUp().setUps().get(0).holding())
                .apart()
                .value()
                .inside();
        assertThat(apart).isCloseTo(0.559 * 600, ONE_HUNDREDTH);
    }

    /** In a vee the bar rubs on three lines: 0.15 · 15 000 · (1 + √2) = 5432 N. */
    @Test
    void a_bar_in_v_grooved_jaws_lies_in_the_level_vee_and_is_held_on_three_lines() {
        ViseHolding vee = with(sixInch(), ViseField.JAWS, "vees-6in");
        Plan plan = plan(HoldingJobs.bar("30 mm", "120 mm"), Side.FRONT, 1, vee);
        assertThat(held(plan, new Vector(60, 15, 15), Vector.RIGHT))
                .isCloseTo(0.15 * 15_000 * (1 + Math.sqrt(2)), ONE_HUNDREDTH);
        assertThat(plan.part().setUps().get(0).heights().partBottom()
                        - plan.part().setUps().get(0).heights().bed())
                .isEqualTo(26 - 15);
    }

    /** Jaws 50 high cut 12 deep: the part stands 38 over the bed and is gripped 12; soft jaws rub 0.20. */
    @Test
    void in_jaws_cut_to_a_step_the_part_stands_on_the_step() {
        ViseHolding soft = with(sixInch(), ViseField.JAWS, "soft-jaws-6in");
        ViseHolding cut = with(soft, ViseField.JAW_CUT, ViseHolding.JawCut.STEP);
        Plan plan = plan(
                HoldingJobs.block("80 mm", "40 mm", "30 mm"),
                Side.TOP,
                0,
                with(cut, ViseField.JAW_CUT_DEPTH, HoldingShop.length("12 mm")));
        var heights = plan.part().setUps().get(0).heights();
        assertThat(heights.partBottom() - heights.bed()).isEqualTo(38);
        assertThat(heights.gripDepth()).isEqualTo(12);
        assertThat(plan.part().setUps().get(0).fixtures())
                .extracting(body -> body.name())
                .contains("step of the solid jaw")
                .doesNotContain("front parallel");
        assertThat(held(plan, new Vector(40, 20, 6), Vector.RIGHT)).isCloseTo(2 * 0.20 * 15_000, ONE_HUNDREDTH);
    }

    private static Strapping by(String id, Strapping.By by) {
        return StrapField.BY.write(Strapping.pencilled(id), Plannable.inked(by));
    }

    /** Two bolts press with all that their studs pull: 0.18 · (2 · 17 500 + weight of 577 N). */
    @Test
    void bolts_through_its_own_holes_press_a_plate_with_all_that_their_studs_pull() {
        Feature holes = HoldingJobs.holes("h1", Side.TOP, "14 mm", null, 2, "400 mm", 1, "1 mm");
        TableHolding bolted =
                TableHolding.pencilled().withStraps(List.of(by("a", Strapping.By.BOLT), by("b", Strapping.By.BOLT)));
        TableHolding flat = setwright.job.TableField.SEAT.write(bolted, Plannable.inked(TableHolding.Seat.TABLE));
        Job job = HoldingJobs.job(
                HoldingJobs.plate("600 mm", "200 mm", "25 mm"), List.of(holes), List.of(setUp(Side.TOP, 0, flat)));
        Job received = job.withPlan(job.plan().withReceived(List.of("h1")));
        Plan plan = Planner.plan(received, shop());
        double weight = 600 * 200 * 25 * 7.85e-6 * 9.80665;
        assertThat(held(plan, new Vector(300, 100, 0), Vector.RIGHT))
                .isCloseTo(0.18 * (2 * 17_500 + weight), Percentage.withPercentage(2));
        assertThat(plan.part().setUps().get(0).fixtures())
                .extracting(body -> body.name())
                .contains("left bolt", "nut of the left bolt");
    }

    /**
     * Clamps on both ends press 0.5 · 17 500 = 8750 N sideways each, against each other, and a quarter of that down: across,
     * only the table rubs, 0.18 · (4 · 2187.5 + 353 N) with four of them.
     */
    @Test
    void clamps_on_the_edges_hold_across_by_what_they_press_down() {
        List<Strapping> four = List.of(
                by("a", Strapping.By.EDGE_CLAMP),
                by("b", Strapping.By.EDGE_CLAMP),
                by("c", Strapping.By.EDGE_CLAMP),
                by("d", Strapping.By.EDGE_CLAMP));
        Plan plan = plan(
                HoldingJobs.plate("600 mm", "300 mm", "25 mm"),
                Side.TOP,
                0,
                TableHolding.pencilled().withStraps(four));
        double weight = 600 * 300 * 25 * 7.85e-6 * 9.80665;
        assertThat(held(plan, new Vector(300, 150, 0), Vector.AWAY))
                .isCloseTo(0.18 * (4 * 2187.5 + weight), ONE_HUNDREDTH);
        assertThat(plan.part().setUps().get(0).heights().jawTop()).isEqualTo(25);
    }

    /** Two straps and three jacks: 0.15 · (2 · 11 667 + weight) along, steel on steel; one jack under each pad. */
    @Test
    void a_rough_body_stands_on_three_jacks_with_its_straps_over_two_of_them() {
        TableHolding jacks =
                setwright.job.TableField.SEAT.write(TableHolding.pencilled(), Plannable.inked(TableHolding.Seat.JACKS));
        Plan plan = plan(HoldingJobs.block("200 mm", "120 mm", "60 mm"), Side.TOP, 0, jacks);
        double weight = 200 * 120 * 60 * 7.85e-6 * 9.80665;
        assertThat(held(plan, new Vector(100, 60, 0), Vector.RIGHT))
                .isCloseTo(0.15 * (2 * 11_667 + weight), ONE_HUNDREDTH);
        assertThat(plan.part().setUps().get(0).fixtures())
                .extracting(body -> body.name())
                .contains("jack 1", "jack 2", "jack 3");
        assertThat(plan.part().setUps().get(0).heights().partBottom()).isEqualTo(50);
    }
}
