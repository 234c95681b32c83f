package setwright.plan.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.HoldingJobs.setUp;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.holding.Outlook;
import setwright.holding.balance.Answer;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Holding;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Plannable;
import setwright.job.Pocket;
import setwright.job.StopAt;
import setwright.job.TableHolding;
import setwright.job.UndecidedHolding;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.HoldingJobs;
import setwright.plan.HoldingShop;
import setwright.plan.Plan;
import setwright.plan.Planner;

/**
 * Grips by hand. Every strap: M12 at 42 N·m with nut factor 0.2 is 42 000 / (0.2 · 12) = 17.5 kN; 32 mm from pad to stud
 * and 64 to the heel leave 17.5 · 64 / 96 = 11.667 kN on the work (stud a third from the work: Milling p. 195). Friction by
 * the shop's rows: steel on cast iron 0.18, steel on steel 0.15, smooth jaw on steel 0.15. Mild steel 7.85 kg/dm³.
 */
class BalancesTest {
    private static final double STRAP = 11_667;
    private static final Percentage ONE_HUNDREDTH = Percentage.withPercentage(1);

    private static Plan plan(Blank blank, Side up, int quarterTurns, Holding holding, Feature... features) {
        return HoldingJobs.plan(blank, List.of(features), List.of(setUp(up, quarterTurns, holding)));
    }

    /** The largest force of that direction, at that place, that is held; N. */
    private static double held(Plan plan, Vector at, Vector direction, Outlook outlook) {
        Load load = Load.force("push", at, direction.times(1000));
        return 1000 * answer(plan, load, outlook).factor();
    }

    private static Answer answer(Plan plan, Load load, Outlook outlook) {
        return Balances.of(plan.drawnUp().setUps().get(0), plan.part().setUps().get(0), plan.rows())
                .orElseThrow()
                .answer(outlook, List.of(load));
    }

    private static DeviceHolding on(DeviceHolding.On on, String device) {
        return new DeviceHolding(
                on, Plannable.inked(device), Plannable.pencilled(), Plannable.pencilled(), null, List.of(), List.of());
    }

    /** 0.18 · (4 · 11 667 + 346.5) = 8462 N; on a bad day 0.15 · (0.7 · 46 667 + 346.5) = 4952 N. */
    @Test
    void a_plate_under_four_straps_slides_when_all_their_friction_on_the_table_is_used_up() {
        Plan plan = plan(HoldingJobs.plate("600 mm", "300 mm", "25 mm"), Side.TOP, 0, new UndecidedHolding());
        Vector middle = new Vector(300, 150, 0);
        assertThat(held(plan, middle, Vector.RIGHT, Outlook.EXPECTED))
                .isCloseTo(0.18 * (4 * STRAP + 346.5), ONE_HUNDREDTH);
        assertThat(held(plan, middle, Vector.AWAY, Outlook.EXPECTED))
                .isCloseTo(0.18 * (4 * STRAP + 346.5), ONE_HUNDREDTH);
        assertThat(held(plan, middle, Vector.RIGHT, Outlook.PESSIMISTIC))
                .isCloseTo(0.15 * (0.7 * 4 * STRAP + 346.5), ONE_HUNDREDTH);
        Answer answer = answer(plan, Load.force("push", middle, new Vector(1000, 0, 0)), Outlook.EXPECTED);
        assertThat(answer.words()).contains("slides").contains("under the left front strap");
    }

    /** Straight up nothing rubs: 4 · 11 667 + 346.5 = 47 014 N. */
    @Test
    void a_plate_lifts_when_straps_and_weight_are_pulled_up() {
        Plan plan = plan(HoldingJobs.plate("600 mm", "300 mm", "25 mm"), Side.TOP, 0, new UndecidedHolding());
        assertThat(held(plan, new Vector(300, 150, 25), Vector.UP, Outlook.EXPECTED))
                .isCloseTo(4 * STRAP + 346.5, ONE_HUNDREDTH);
    }

    @Test
    void a_stop_takes_what_pushes_against_it() {
        Plan free = plan(HoldingJobs.plate("600 mm", "300 mm", "25 mm"), Side.TOP, 0, TableHolding.pencilled());
        TableHolding open = TableHolding.pencilled();
        StopAt right = new StopAt("stop1", ViseHolding.NONE, Edge.RIGHT, HoldingShop.length("150 mm"));
        Plan stopped = plan(
                HoldingJobs.plate("600 mm", "300 mm", "25 mm"),
                Side.TOP,
                0,
                new TableHolding(
                        open.seat(),
                        open.packing(),
                        open.packingHeight(),
                        open.x(),
                        open.y(),
                        List.of(),
                        List.of(right)));
        Vector at = new Vector(300, 150, 20);
        assertThat(held(stopped, at, Vector.RIGHT, Outlook.EXPECTED))
                .isGreaterThan(3 * held(free, at, Vector.RIGHT, Outlook.EXPECTED));
        assertThat(held(stopped, at, Vector.RIGHT.times(-1), Outlook.EXPECTED))
                .isCloseTo(held(free, at, Vector.RIGHT.times(-1), Outlook.EXPECTED), ONE_HUNDREDTH);
    }

    /**
     * 40 mm shaft on the edges of a 5/8 in slot: sin β = 15.875 / 40, cos β = 0.9179; the edges press 1 / cos β as much as
     * straps and weight (73.9 N as a square bar): 0.18 · (2 · 11 667 + 73.9) / 0.9179 = 4590 N along the shaft.
     */
    @Test
    void a_shaft_on_the_slot_is_wedged_between_its_edges() {
        Plan plan = plan(
                HoldingJobs.bar("40 mm", "600 mm"),
                Side.FRONT,
                1,
                new UndecidedHolding(),
                HoldingJobs.keyseat(Side.FRONT, "40 mm"));
        Vector atEdges = new Vector(300, 20, 20 - 20 * 0.9179);
        assertThat(held(plan, atEdges, Vector.RIGHT, Outlook.EXPECTED)).isCloseTo(4590, ONE_HUNDREDTH);
    }

    /**
     * 16 mm bar in 90 degree V-blocks: 0.15 · (2 · 11 667 + 11.8) / cos 45° = 4952 N along the bar; 1.2 % more where the
     * flanks rub across as well: µ / √(cos² - µ² sin²).
     */
    @Test
    void a_bar_in_v_blocks_is_pressed_on_both_flanks() {
        Plan plan = plan(HoldingJobs.bar("16 mm", "600 mm"), Side.FRONT, 1, new UndecidedHolding());
        Vector atFlanks = new Vector(300, 8, 8 - 8 * Math.sqrt(0.5));
        assertThat(held(plan, atFlanks, Vector.RIGHT, Outlook.EXPECTED))
                .isBetween(0.998 * 0.15 * (2 * STRAP + 11.8) / Math.sqrt(0.5), 1.012 * 4952);
    }

    /** 1 N/mm² on 100 x 80 is 8000 N: 0.15 · (8000 + 12.3) = 1202 N. */
    @Test
    void a_magnetic_chuck_holds_by_the_friction_of_its_pull() {
        Plan plan = plan(
                HoldingJobs.block("100 mm", "80 mm", "20 mm"),
                Side.TOP,
                0,
                on(DeviceHolding.On.MAGNETIC_CHUCK, "magnet-300"));
        assertThat(held(plan, new Vector(50, 40, 0), Vector.RIGHT, Outlook.EXPECTED))
                .isCloseTo(1202, ONE_HUNDREDTH);
    }

    /** Two clamps on an upright face: 0.18 · 2 · 11 667 = 4200 N along it. */
    @Test
    void clamps_on_an_angle_plate_hold_along_its_face() {
        Plan plan = plan(
                HoldingJobs.block("100 mm", "40 mm", "80 mm"),
                Side.TOP,
                0,
                on(DeviceHolding.On.ANGLE_PLATE, "angle-plate-150"));
        assertThat(held(plan, new Vector(50, 40, 40), Vector.RIGHT, Outlook.EXPECTED))
                .isCloseTo(4200, ONE_HUNDREDTH);
    }

    /** Four side by side share the firm grip: 2 · 0.15 · 15 000 / 4 = 1125 N along the jaws for each. */
    @Test
    void each_of_four_parts_in_one_vise_has_a_quarter_of_the_grip() {
        ViseHolding six = ViseField.VISE.write(ViseHolding.pencilled(), Plannable.inked("vise-6in"));
        ViseHolding bare = ViseField.PARALLELS.write(six, Plannable.inked(ViseHolding.NONE));
        ViseHolding four = ViseField.PARTS.write(bare, Plannable.inked(4));
        Plan plan = plan(HoldingJobs.block("30 mm", "40 mm", "50 mm"), Side.TOP, 0, four);
        assertThat(held(plan, new Vector(15, 20, 22), Vector.RIGHT, Outlook.EXPECTED))
                .isCloseTo(1125, ONE_HUNDREDTH);
    }

    @Test
    void a_base_plate_that_is_drilled_and_pocketed_holds_under_its_straps() {
        Pocket pocket = new Pocket(
                "p1",
                "",
                Side.TOP,
                HoldingJobs.size("80 mm"),
                HoldingJobs.size("60 mm"),
                HoldingJobs.size("10 mm"),
                HoldingShop.length("6 mm"),
                new Placed(Pattern.Datum.CENTRE, HoldingShop.length("0 mm"), HoldingShop.length("0 mm"), null),
                null,
                GotBy.DIAL);
        Plan plan = plan(
                HoldingJobs.plate("600 mm", "300 mm", "25 mm"),
                Side.TOP,
                0,
                new UndecidedHolding(),
                pocket,
                HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 3, "200 mm", 3, "100 mm"));
        assertThat(plan.hold().operations()).isNotEmpty();
        assertThat(plan.hold().operations()).allSatisfy(hold -> {
            assertThat(hold.factor().expected()).isGreaterThan(2);
            assertThat(hold.factor().pessimistic()).isGreaterThan(1);
        });
    }

    @Test
    void what_is_not_balanced_is_said() {
        Plan rotary = plan(
                HoldingJobs.block("100 mm", "80 mm", "20 mm"),
                Side.TOP,
                0,
                on(DeviceHolding.On.ROTARY_TABLE, "rotary-200"));
        assertThat(rotary.notChecked())
                .anyMatch(one -> one.needs().contains("that the lock of the Rotary table 200 holds"));
        Plan bare = Planner.plan(
                HoldingJobs.job(
                        HoldingJobs.plate("600 mm", "300 mm", "25 mm"),
                        List.of(HoldingJobs.holes("h1", Side.TOP, "10 mm", "8 mm", 1, "1 mm", 1, "1 mm")),
                        List.of(setUp(Side.TOP, 0, new UndecidedHolding()))),
                HoldingShop.bare());
        assertThat(bare.hold().operations()).isEmpty();
        assertThat(bare.notChecked()).anyMatch(one -> one.check().equals("slides-in-grip"));
    }

    @Test
    void the_working_leads_back_to_the_torque_at_the_nut() {
        Plan plan = plan(
                HoldingJobs.plate("600 mm", "300 mm", "25 mm"),
                Side.TOP,
                0,
                new UndecidedHolding(),
                HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 3, "200 mm", 3, "100 mm"));
        Balance balance = Balances.of(
                        plan.drawnUp().setUps().get(0), plan.part().setUps().get(0), plan.rows())
                .orElseThrow();
        assertThat(balance.given().inside()).isCloseTo(STRAP, within(1.0));
    }
}
