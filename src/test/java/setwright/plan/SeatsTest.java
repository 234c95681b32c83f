package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.HoldingJobs.setUp;
import static setwright.plan.HoldingShop.angle;
import static setwright.plan.HoldingShop.length;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import setwright.geometry.Body;
import setwright.geometry.Box;
import setwright.geometry.Role;
import setwright.geometry.Side;
import setwright.geometry.Stock;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.Edge;
import setwright.job.Holding;
import setwright.job.Plannable;
import setwright.job.StopAt;
import setwright.job.TableHolding;
import setwright.job.Tilt;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.part.Heights;
import setwright.plan.part.SetUpStage;

/** Where parts sit, reckoned by hand from the sizes of the rows. */
class SeatsTest {
    private static SetUpStage stage(Blank blank, Side up, int quarterTurns, Holding holding) {
        Plan plan = HoldingJobs.plan(blank, List.of(), List.of(setUp(up, quarterTurns, holding)));
        return plan.part().setUp("s1").orElseThrow();
    }

    private static DeviceHolding on(DeviceHolding.On on, String device) {
        return new DeviceHolding(
                on, Plannable.inked(device), Plannable.pencilled(), Plannable.pencilled(), null, List.of(), List.of());
    }

    private static TableHolding table(TableHolding.Seat seat, String packing, String height) {
        TableHolding pencilled = TableHolding.pencilled();
        return new TableHolding(
                Plannable.inked(seat),
                Plannable.inked(packing),
                Plannable.inked(length(height)),
                pencilled.x(),
                pencilled.y(),
                List.of(),
                List.of());
    }

    private static Box box(SetUpStage stage, String name) {
        return stage.fixtures().stream()
                .filter(body -> body.name().equals(name))
                .map(body -> body.solid().box())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_plate_on_the_table_stands_at_nought_and_on_packing_as_high_as_the_packing() {
        Blank plate = HoldingJobs.plate("300 mm", "150 mm", "20 mm");
        assertThat(stage(plate, Side.TOP, 0, table(TableHolding.Seat.TABLE, "none", "0 mm"))
                        .heights()
                        .partBottom())
                .isZero();
        SetUpStage packed = stage(plate, Side.TOP, 0, table(TableHolding.Seat.PACKING, "blocks-123", "25.4 mm"));
        assertThat(packed.heights().partBottom()).isEqualTo(25.4);
        assertThat(packed.heights().startTop()).isCloseTo(45.4, within(1e-9));
        Box block = box(packed, "packing 1");
        assertThat(block.zHigh() - block.zLow()).isCloseTo(25.4, within(1e-9));
        assertThat(block.plan().length() * block.plan().depth()).isCloseTo(50.8 * 76.2, within(1e-6));
    }

    /**
     * Middle of a 50 mm shaft over the edges of a 5/8 in slot: √(25² - 7.9375²) = 23.706, so that it sinks 1.294 mm. The
     * rows VB-TSLOT stand with ClosedFormsTest.
     */
    @Test
    void a_shaft_sinks_into_the_slot_that_it_lies_on() {
        SetUpStage stage = stage(
                HoldingJobs.bar("50 mm", "600 mm"), Side.FRONT, 1, table(TableHolding.Seat.T_SLOT, "none", "0 mm"));
        assertThat(stage.heights().partBottom()).isCloseTo(-1.294, within(0.001));
        assertThat(stage.heights().startTop()).isCloseTo(48.706, within(0.001));
        assertThat(stage.heights().length()).isEqualTo(600);
    }

    /** Vertex 18 mm over the foot, 90 degrees: middle 18 + 25 · √2 = 53.355, underside 28.355 (VB-CENTRE-1: 35.3553). */
    @Test
    void a_bar_in_v_blocks_stands_as_high_as_the_vee_carries_it() {
        SetUpStage stage =
                stage(HoldingJobs.bar("50 mm", "400 mm"), Side.FRONT, 1, on(DeviceHolding.On.V_BLOCKS, "vees"));
        assertThat(stage.heights().partBottom()).isCloseTo(28.3553, within(0.0001));
        assertThat(stage.fixtures().stream().filter(body -> body.role() == Role.PACKING))
                .hasSize(2);
    }

    @Test
    void devices_carry_the_part_at_their_own_height() {
        Blank disc = HoldingJobs.block("100 mm", "80 mm", "20 mm");
        assertThat(bottom(disc, DeviceHolding.On.ROTARY_TABLE, "rotary-200")).isEqualTo(90);
        assertThat(bottom(disc, DeviceHolding.On.MAGNETIC_CHUCK, "magnet-300")).isEqualTo(60);
        assertThat(bottom(disc, DeviceHolding.On.FIXTURE_PLATE, "plate-400")).isEqualTo(25);
        assertThat(bottom(disc, DeviceHolding.On.SET_UP_BLOCKS, "blocks-123")).isEqualTo(25.4);
        assertThat(bottom(disc, DeviceHolding.On.ANGLE_PLATE, "angle-plate-150"))
                .isZero();
    }

    private static double bottom(Blank blank, DeviceHolding.On on, String device) {
        return stage(blank, Side.TOP, 0, on(on, device)).heights().partBottom();
    }

    /** Axis of the head 100 mm over the table: underside of a 30 mm bar at 85; its jaws reach 30 mm over it. */
    @Test
    void a_bar_in_a_dividing_head_lies_at_its_centre_height() {
        SetUpStage stage = stage(
                HoldingJobs.bar("30 mm", "120 mm"), Side.FRONT, 1, on(DeviceHolding.On.DIVIDING_HEAD, "head-200"));
        assertThat(stage.heights().partBottom()).isEqualTo(85);
        assertThat(stage.heights().left())
                .isCloseTo(box(stage, "dividing head").plan().xHigh() - 30, within(1e-9));
        assertThat(box(stage, "chuck").plan().xHigh())
                .isCloseTo(box(stage, "dividing head").plan().xHigh(), within(1e-9));
    }

    /** 6 in vise: bed 73 mm; block 50 across its flats: axis at 98, underside of a 20 mm bar at 88. */
    @Test
    void a_bar_in_a_lying_collet_block_is_half_its_flats_over_the_vise_bed() {
        Holding holding = on(DeviceHolding.On.COLLET_BLOCK, "collet-block-4");
        assertThat(stage(HoldingJobs.bar("20 mm", "100 mm"), Side.FRONT, 1, holding)
                        .heights()
                        .partBottom())
                .isEqualTo(88);
        Heights standing =
                stage(HoldingJobs.bar("20 mm", "100 mm"), Side.TOP, 0, holding).heights();
        assertThat(standing.partBottom()).isEqualTo(73);
        assertThat(standing.jawTop()).isEqualTo(143);
    }

    /** 60 x 40 tilted by 10 degrees about Y: 60 cos + 40 sin = 66.03 long, 60 sin + 40 cos = 49.81 high. */
    @Test
    void a_tilted_block_sits_by_the_box_around_it_and_is_met_as_it_is() {
        Plan plan = HoldingJobs.plan(
                HoldingJobs.block("60 mm", "50 mm", "40 mm"),
                List.of(),
                List.of(setUp(Side.TOP, 0, ViseHolding.pencilled())
                        .withTilt(new Tilt(Tilt.Axis.Y, angle("10 deg"), Tilt.By.ANGLE_BLOCKS))));
        Heights heights = plan.part().setUp("s1").orElseThrow().heights();
        assertThat(heights.length()).isCloseTo(66.03, within(0.01));
        assertThat(heights.startTop() - heights.partBottom()).isCloseTo(49.81, within(0.01));
        Stock start = plan.part().setUp("s1").orElseThrow().start();
        assertThat(start.bulk().volume()).isCloseTo(60 * 50 * 40, within(0.1));
        assertThat(start.solid().box().zLow()).isCloseTo(heights.partBottom(), within(1e-9));
        assertThat(start.solid().box().zHigh()).isCloseTo(heights.startTop(), within(1e-9));
        assertThat(start.solid().box().plan().xLow()).isCloseTo(heights.left(), within(1e-9));
        assertThat(plan.notChecked()).anyMatch(one -> one.check().equals("tilted-stock"));
    }

    @Test
    void a_swivelled_head_leaves_the_part_level() {
        Plan plan = HoldingJobs.plan(
                HoldingJobs.block("60 mm", "50 mm", "40 mm"),
                List.of(),
                List.of(setUp(Side.TOP, 0, ViseHolding.pencilled())
                        .withTilt(new Tilt(Tilt.Axis.Y, angle("10 deg"), Tilt.By.HEAD))));
        assertThat(plan.part().setUp("s1").orElseThrow().heights().length()).isEqualTo(60);
        assertThat(plan.notChecked()).noneMatch(one -> one.check().equals("tilted-stock"));
    }

    /** Four shoes 30 long side by side: 120 over all, so that the first has its middle at -45. */
    @Test
    void the_first_of_a_row_of_parts_sits_at_its_left_end() {
        SetUpStage stage = stage(HoldingJobs.block("30 mm", "40 mm", "30 mm"), Side.TOP, 0, vise(null, 4, List.of()));
        assertThat(stage.heights().left()).isEqualTo(-60);
        assertThat(stage.heights().right()).isEqualTo(-30);
    }

    @Test
    void soft_jaws_stand_as_high_and_as_thick_as_they_are() {
        SetUpStage stage =
                stage(HoldingJobs.block("60 mm", "50 mm", "60 mm"), Side.TOP, 0, vise("soft-jaws-6in", 1, List.of()));
        assertThat(stage.heights().jawTop()).isEqualTo(73 + 50);
        assertThat(box(stage, "solid jaw").plan().depth()).isEqualTo(25);
    }

    @Test
    void a_stop_stands_against_the_side_it_is_named_for() {
        StopAt left = new StopAt("stop1", "vise-stop", Edge.LEFT, length("20 mm"));
        SetUpStage stage =
                stage(HoldingJobs.block("60 mm", "50 mm", "40 mm"), Side.TOP, 0, vise(null, 1, List.of(left)));
        Body stop = stage.fixtures().stream()
                .filter(body -> body.role() == Role.STOP)
                .findFirst()
                .orElseThrow();
        assertThat(stop.solid().box().plan().xHigh()).isEqualTo(stage.heights().left());
        assertThat(stop.solid().box().plan().middle().y())
                .isCloseTo(stage.heights().front() + 20, within(1e-9));
    }

    private static ViseHolding vise(@Nullable String jaws, int parts, List<StopAt> stops) {
        ViseHolding six = ViseField.VISE.write(ViseHolding.pencilled(), Plannable.inked("vise-6in"));
        ViseHolding gang = ViseField.PARTS.write(six, Plannable.inked(parts));
        ViseHolding jawed = jaws == null ? gang : ViseField.JAWS.write(gang, Plannable.inked(jaws));
        return jawed.withStops(stops);
    }
}
