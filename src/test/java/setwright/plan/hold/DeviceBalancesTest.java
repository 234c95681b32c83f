package setwright.plan.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.HoldingJobs.setUp;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.holding.Outlook;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.job.Blank;
import setwright.job.DeviceField;
import setwright.job.DeviceHolding;
import setwright.job.DeviceHolding.Fastening;
import setwright.job.DeviceHolding.On;
import setwright.job.DrawnSetUp;
import setwright.job.Plannable;
import setwright.plan.HoldingJobs;
import setwright.plan.Plan;
import setwright.plan.part.SetUpStage;

/**
 * What holds a part on a device, and the device below it, against statics by hand. Figures of the rows: turner's tape 0.25
 * along and 0.15 N/mm² off, 3-jaw chuck 15 kN with jaws 30 mm deep, an R8-like collet 600 to 3750 lbf, expanding mandrel
 * 100 N·m, tailstock 2 kN; smooth jaws on steel 0.15, cast iron on cast iron 0.20, metal on board 0.25.
 */
class DeviceBalancesTest {
    private static final Percentage ONE = Percentage.withPercentage(1);
    private static final Vector LEFT = Vector.RIGHT.times(-1);

    private static DeviceHolding held(On on, String device, Fastening by, String gear) {
        DeviceHolding holding = DeviceField.DEVICE.write(DeviceHolding.pencilled(on), Plannable.inked(device));
        holding = DeviceField.FASTENING.write(holding, Plannable.inked(by));
        return DeviceField.GEAR.write(holding, Plannable.inked(gear));
    }

    private static Plan plan(Blank blank, Side up, int quarterTurns, DeviceHolding holding) {
        return HoldingJobs.plan(blank, List.of(), List.of(setUp(up, quarterTurns, holding)));
    }

    private static double borne(Plan plan, Load load, Outlook outlook) {
        return Balances.of(setUpOf(plan), stageOf(plan), plan.rows())
                .orElseThrow()
                .answer(outlook, List.of(load))
                .factor();
    }

    private static double held(Plan plan, Vector at, Vector direction) {
        return 1000 * borne(plan, Load.force("push", at, direction.times(1000)), Outlook.EXPECTED);
    }

    private static OperationHold joint(Plan plan, Joint joint, Load load) {
        SetUpStage stage = stageOf(plan);
        HoldQuestion asked = new HoldQuestion(
                "o1", "s1", setUpOf(plan).holding(), stage.heights(), stage.fixtures(), stage.start(), List.of(load));
        return Chain.of(setUpOf(plan), stage, plan.rows()).stream()
                .map(one -> one.hold(asked))
                .filter(hold -> hold.joint() == joint)
                .findFirst()
                .orElseThrow();
    }

    private static DrawnSetUp setUpOf(Plan plan) {
        return plan.drawnUp().setUps().get(0);
    }

    private static SetUpStage stageOf(Plan plan) {
        return plan.part().setUps().get(0);
    }

    private static Load push(Vector at, Vector direction) {
        return Load.force("push", at, direction.times(1000));
    }

    /** 0.25 · 100 · 80 = 2000 N along, and 41 more by the weight; straight off half of 0.15 · 8000 = 600 N, and 12 of weight. */
    @Test
    void tape_holds_by_its_area_along_the_face_and_by_half_of_it_straight_off() {
        Plan plan = plan(
                HoldingJobs.block("100 mm", "80 mm", "20 mm"),
                Side.TOP,
                0,
                held(On.FIXTURE_PLATE, "board-mdf-400x200x19", Fastening.TAPE, "tape-turners"));
        assertThat(held(plan, new Vector(50, 40, 0), Vector.RIGHT)).isCloseTo(2041, ONE);
        assertThat(held(plan, new Vector(50, 40, 0), Vector.UP)).isCloseTo(612, ONE);
        assertThat(stageOf(plan).heights().partBottom()).isCloseTo(19.13, within(1e-9));
    }

    /** Ten screws of 1 kN round a sheet of 200 x 100, both boards rub: 2 · 0.25 · 10 000 N. */
    @Test
    void a_sheet_between_boards_is_rubbed_by_both() {
        Plan plan = plan(
                HoldingJobs.plate("200 mm", "100 mm", "3 mm"),
                Side.TOP,
                0,
                held(On.FIXTURE_PLATE, "board-mdf-400x200x19", Fastening.SANDWICH, "board-mdf-300x200x12"));
        assertThat(held(plan, new Vector(100, 50, 1.5), Vector.RIGHT)).isCloseTo(5000, ONE);
    }

    /** 0.15 · 15 000 N on 30 mm is 67.5 N·m; straight up 2250 N and the weight. */
    @Test
    void a_chuck_holds_against_turning_by_half_the_diameter() {
        Plan plan = plan(
                HoldingJobs.bar("60 mm", "80 mm"),
                Side.TOP,
                0,
                held(On.ROTARY_TABLE, "rotary-200", Fastening.CHUCK, "work-chuck-3-jaw-100"));
        Load turn = new Load("turn", new Vector(30, 30, 15), Vector.ZERO, new Vector(0, 0, 1000));
        assertThat(borne(plan, turn, Outlook.EXPECTED)).isCloseTo(67.5, ONE);
        assertThat(held(plan, new Vector(30, 30, 15), Vector.UP)).isCloseTo(2250 + 17.4, ONE);
        assertThat(stageOf(plan).heights().partBottom()).isCloseTo(90 + 95 - 30, within(1e-9));
    }

    /** The middle of 600 and 3750 lbf in ratio is 1500 lbf = 6672 N; on a bad day 600 lbf = 2669 N. */
    @Test
    void a_bar_slips_in_its_collet_at_the_published_band() {
        Plan plan = plan(
                HoldingJobs.bar("20 mm", "100 mm"),
                Side.FRONT,
                1,
                held(On.COLLET_BLOCK, "collet-block-4", Fastening.COLLET, "none"));
        Load along = push(new Vector(17, 10, 10), Vector.RIGHT);
        assertThat(1000 * borne(plan, along, Outlook.EXPECTED)).isCloseTo(6672, ONE);
        assertThat(1000 * borne(plan, along, Outlook.PESSIMISTIC)).isCloseTo(2669, ONE);
    }

    /** Firm is 15 kN on the 6 in vise: 2 · 0.15 · 15 000 = 4500 N along the jaws. */
    @Test
    void a_collet_block_is_held_by_the_jaws_of_its_vise_and_the_vise_by_its_bolts() {
        Plan plan = plan(
                HoldingJobs.bar("20 mm", "100 mm"),
                Side.FRONT,
                1,
                held(On.COLLET_BLOCK, "collet-block-4", Fastening.COLLET, "none"));
        OperationHold jaws = joint(plan, Joint.IN_VISE, push(new Vector(35, 10, 10), Vector.RIGHT));
        assertThat(1000 * jaws.factor().expected()).isCloseTo(4500, ONE);
        assertThat(jaws.thing()).isEqualTo("Square collet block");
        OperationHold bolts = joint(plan, Joint.ON_TABLE, push(new Vector(35, 10, -88), Vector.RIGHT));
        assertThat(bolts.thing())
                .isEqualTo(plan.rows().vise("vise-6in").orElseThrow().name());
        assertThat(1000 * bolts.factor().expected())
                .as("beside the middle of the base it turns sooner than it slides, at 0.2 of 30 kN and the vise")
                .isBetween(3000.0, 6300.0);
        assertThat(plan.notChecked()).noneMatch(one -> one.needs().contains("collet"));
    }

    /** 100 N·m by the row, whatever bore it is opened to. */
    @Test
    void a_mandrel_turns_its_part_with_the_torque_of_its_row() {
        Plan plan = plan(
                HoldingJobs.bar("80 mm", "30 mm"),
                Side.FRONT,
                1,
                held(On.DIVIDING_HEAD, "head-200", Fastening.MANDREL, "mandrel-expanding-25-38"));
        Load turn = new Load("turn", new Vector(15, 40, 40), Vector.ZERO, new Vector(1000, 0, 0));
        assertThat(borne(plan, turn, Outlook.EXPECTED)).isBetween(98.0, 99.0);
    }

    /** Wound in with 2 kN: the left centre is left at 2 kN, and at most by its friction later. */
    @Test
    void a_shaft_between_centres_leaves_them_when_it_is_pushed_harder_than_they_are_wound_in() {
        Plan plan = plan(
                HoldingJobs.bar("30 mm", "200 mm"),
                Side.FRONT,
                1,
                held(On.DIVIDING_HEAD, "head-200", Fastening.BETWEEN_CENTRES, "none"));
        assertThat(held(plan, new Vector(100, 15, 15), Vector.RIGHT))
                .isBetween(1980.0, 2000 * (1 + 0.15 / Math.tan(Math.PI / 6)));
        assertThat(held(plan, new Vector(100, 15, 15), LEFT)).isGreaterThan(2000);
    }

    /** 0.20 · (30 000 + 9.81 · 31.3) = 6061 N where the device meets the table. */
    @Test
    void a_rotary_table_slides_when_the_friction_under_its_two_bolts_is_used_up() {
        Plan plan = plan(
                HoldingJobs.block("100 mm", "80 mm", "20 mm"),
                Side.TOP,
                0,
                held(On.ROTARY_TABLE, "rotary-200", Fastening.STRAPS, "none"));
        OperationHold bolts = joint(plan, Joint.ON_TABLE, push(new Vector(50, 40, -90), Vector.RIGHT));
        assertThat(1000 * bolts.factor().expected()).isCloseTo(6061, ONE);
        assertThat(bolts.motion()).isEqualTo("slides");
    }

    /** 1 kN at 50 mm from its middle against a lock of 120 N·m: 2.4 times; on a bad day 0.7 / 1.3 of it. */
    @Test
    void the_lock_bears_what_the_cut_turns_the_table_with() {
        Plan plan = plan(
                HoldingJobs.block("100 mm", "80 mm", "20 mm"),
                Side.TOP,
                0,
                held(On.ROTARY_TABLE, "rotary-table-8in", Fastening.STRAPS, "none"));
        OperationHold lock = joint(plan, Joint.LOCK, push(new Vector(100, 40, 20), Vector.AWAY));
        assertThat(lock.factor().expected()).isCloseTo(2.4, within(1e-9));
        assertThat(lock.factor().pessimistic()).isCloseTo(2.4 * 0.7 / 1.3, within(1e-9));
    }

    /** 400 x 200 x 25 aluminium stands 3 mm over the jaws of the 6 in vise, on parallels. */
    @Test
    void a_fixture_plate_in_a_vise_stands_just_over_its_jaws_and_is_held_by_them() {
        DeviceHolding holding = held(On.FIXTURE_PLATE, "fixture-plate-steel-200x150x25", Fastening.STRAPS, "none");
        Plan plan = plan(
                HoldingJobs.block("100 mm", "80 mm", "20 mm"),
                Side.TOP,
                0,
                DeviceField.VISE.write(holding, Plannable.inked("vise-6in")));
        SetUpStage stage = stageOf(plan);
        double jaws = stage.fixtures().stream()
                .filter(body -> body.name().equals("solid jaw"))
                .mapToDouble(body -> body.solid().box().zHigh())
                .findFirst()
                .orElseThrow();
        assertThat(stage.heights().partBottom()).isCloseTo(jaws + 3, within(1e-9));
        OperationHold grip = joint(plan, Joint.IN_VISE, push(new Vector(50, 40, -14), Vector.RIGHT));
        assertThat(1000 * grip.factor().expected()).isCloseTo(4500, ONE);
        assertThat(joint(plan, Joint.ON_TABLE, push(new Vector(50, 40, -14), Vector.RIGHT))
                        .factor()
                        .expected())
                .isGreaterThan(2);
    }

    @Test
    void every_joint_of_every_device_is_answered_or_says_what_it_needs() {
        for (On on : On.values()) {
            Plan plan = plan(HoldingJobs.bar("25 mm", "120 mm"), Side.FRONT, 1, DeviceHolding.pencilled(on));
            assertThat(Chain.open(setUpOf(plan), plan.rows())).as("%s", on).allMatch(open -> open.contains("lock"));
        }
    }
}
