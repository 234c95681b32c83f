package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.HoldingJobs.setUp;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.geometry.Body;
import setwright.geometry.Clearance;
import setwright.geometry.Role;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.job.UndecidedHolding;
import setwright.job.ViseHolding;
import setwright.plan.part.OperationStage;
import setwright.plan.part.SetUpStage;
import setwright.review.RowsInUse;
import setwright.shop.MachineTable;
import setwright.shop.ShopRow;

/** What the pencil takes where nobody decided what holds the part. */
class HoldingPencilTest {
    private static final Blank BASE_PLATE = HoldingJobs.plate("600 mm", "300 mm", "25 mm");

    private static DrawnHolding taken(Blank blank, Side up, int quarterTurns, Feature... features) {
        Plan plan =
                HoldingJobs.plan(blank, List.of(features), List.of(setUp(up, quarterTurns, new UndecidedHolding())));
        return plan.drawnUp().setUps().get(0).holding();
    }

    @Test
    void a_block_goes_into_the_vise_inboard_and_a_wider_one_outboard() {
        DrawnVise inboard = (DrawnVise) taken(HoldingJobs.block("100 mm", "60 mm", "25 mm"), Side.TOP, 0);
        DrawnVise outboard = (DrawnVise) taken(HoldingJobs.block("200 mm", "250 mm", "60 mm"), Side.TOP, 0);
        assertThat(inboard.seat().value()).isEqualTo(ViseHolding.JawSeat.INBOARD);
        assertThat(outboard.seat().value()).isEqualTo(ViseHolding.JawSeat.OUTBOARD);
    }

    @Test
    void a_block_longer_than_three_jaw_widths_wider_than_every_vise_or_thin_for_its_width_is_strapped() {
        assertThat(taken(HoldingJobs.block("470 mm", "60 mm", "40 mm"), Side.TOP, 0)
                        .kind())
                .isEqualTo(DrawnHolding.Kind.TABLE);
        assertThat(taken(HoldingJobs.block("200 mm", "301 mm", "60 mm"), Side.TOP, 0)
                        .kind())
                .isEqualTo(DrawnHolding.Kind.TABLE);
        assertThat(taken(HoldingJobs.plate("200 mm", "150 mm", "3 mm"), Side.TOP, 0)
                        .kind())
                .isEqualTo(DrawnHolding.Kind.TABLE);
        assertThat(taken(HoldingJobs.plate("200 mm", "60 mm", "3 mm"), Side.TOP, 0)
                        .kind())
                .isEqualTo(DrawnHolding.Kind.VISE);
    }

    @Test
    void a_plate_is_packed_up_only_where_something_goes_through_it() {
        DrawnTable blind = (DrawnTable) taken(
                BASE_PLATE, Side.TOP, 0, HoldingJobs.holes("h1", Side.TOP, "10 mm", "12 mm", 2, "100 mm", 2, "60 mm"));
        DrawnTable through = (DrawnTable) taken(
                BASE_PLATE, Side.TOP, 0, HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 2, "100 mm", 2, "60 mm"));
        assertThat(blind.seat().value()).isEqualTo(TableHolding.Seat.TABLE);
        assertThat(through.seat().value()).isEqualTo(TableHolding.Seat.PACKING);
        assertThat(through.packing().value()).isEqualTo("blocks-123");
        assertThat(through.packingHeight().value().inside()).isEqualTo(25.4);
    }

    /** Knee mill table: slots 63.5 apart; a stud stands in one of them, nearer to the pad than to the heel. */
    @Test
    void four_straps_hold_a_base_plate_at_its_ends_with_their_studs_in_the_slots() {
        Plan plan = HoldingJobs.plan(
                BASE_PLATE,
                List.of(HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 3, "200 mm", 3, "100 mm")),
                List.of());
        DrawnTable table = (DrawnTable) plan.drawnUp().setUps().get(0).holding();
        SetUpStage stage = plan.part().setUps().get(0);
        assertThat(table.straps()).hasSize(4);
        MachineTable slots = plan.rows().machine().table();
        for (DrawnStrap strap : table.straps()) {
            double y = stage.heights().front() + strap.v().value().inside();
            assertThat(Math.abs(y) % slots.slotPitch().inside()).isCloseTo(0, within(0.001));
            assertThat(strap.studToHeel().value().inside())
                    .isGreaterThanOrEqualTo(strap.padToStud().value().inside());
            assertThat(strap.heelOver().value().inside()).isBetween(0.0, 2.0);
            assertThat(Math.min(
                            strap.u().value().inside(), 600 - strap.u().value().inside()))
                    .isBetween(15.0, 20.0);
            assertThat(strap.torque().value().inside()).isCloseTo(42_000, within(1.0));
        }
        assertThat(stage.fixtures().stream()
                        .filter(body -> body.role() == Role.STRAP)
                        .map(Body::name))
                .containsExactly("left front strap", "left back strap", "right front strap", "right back strap");
        assertThat(stage.fixtures().stream().filter(body -> body.role() == Role.PACKING))
                .hasSize(4);
    }

    @Test
    void no_tool_of_a_base_plate_touches_a_strap_that_the_pencil_laid() {
        Plan plan = HoldingJobs.plan(
                BASE_PLATE,
                List.of(
                        HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 2, "560 mm", 2, "260 mm"),
                        HoldingJobs.holes("h2", Side.TOP, "6.8 mm", null, 3, "200 mm", 3, "100 mm")),
                List.of());
        SetUpStage stage = plan.part().setUps().get(0);
        List<Body> clamps = stage.fixtures().stream()
                .filter(body -> body.role() != Role.TABLE && body.role() != Role.PACKING)
                .toList();
        assertThat(clamps).hasSize(16);
        assertThat(stage.operations()).isNotEmpty();
        for (OperationStage operation : stage.operations()) {
            assertThat(Clearance.all(operation.tool(), operation.path(), clamps))
                    .allSatisfy(near -> assertThat(near.clearance()).isPositive());
        }
    }

    @Test
    void a_strap_moves_to_the_side_where_the_end_is_cut() {
        Blank bar = HoldingJobs.block("500 mm", "50 mm", "30 mm");
        Feature ends = HoldingJobs.holes("h1", Side.TOP, "12 mm", "10 mm", 2, "460 mm", 1, "10 mm");
        DrawnTable table = (DrawnTable) taken(bar, Side.TOP, 0, ends);
        assertThat(table.straps()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(table.straps())
                .allSatisfy(strap -> assertThat(StrictMath.abs(
                                StrictMath.sin(strap.toward().value().inside())))
                        .isCloseTo(1, within(1e-9)));
    }

    @Test
    void a_shaft_lies_on_the_slot_and_one_too_thin_for_it_in_v_blocks() {
        DrawnTable slot = (DrawnTable)
                taken(HoldingJobs.bar("40 mm", "600 mm"), Side.FRONT, 1, HoldingJobs.keyseat(Side.FRONT, "40 mm"));
        assertThat(slot.seat().value()).isEqualTo(TableHolding.Seat.T_SLOT);
        assertThat(slot.straps()).hasSize(2);
        DrawnDevice vees = (DrawnDevice) taken(HoldingJobs.bar("16 mm", "600 mm"), Side.FRONT, 1);
        assertThat(vees.on()).isEqualTo(DeviceHolding.On.V_BLOCKS);
        assertThat(vees.device().value()).isEqualTo("vees");
    }

    @Test
    void what_a_person_wrote_of_a_strap_stays_and_the_rest_is_filled_in() {
        Strapping ink = StrapField.U.write(Strapping.pencilled("mine"), Plannable.inked(HoldingShop.length("40 mm")));
        Plan plan = HoldingJobs.plan(
                BASE_PLATE,
                List.of(),
                List.of(setUp(Side.TOP, 0, TableHolding.pencilled().withStraps(List.of(ink)))));
        DrawnTable table = (DrawnTable) plan.drawnUp().setUps().get(0).holding();
        assertThat(table.straps()).hasSize(1);
        assertThat(table.straps().get(0).u().value().inside()).isEqualTo(40);
        assertThat(table.straps().get(0).strap().value()).isEqualTo("strap-125");
    }

    @Test
    void a_shop_without_straps_leaves_them_open_and_says_what_is_missing() {
        Job job = HoldingJobs.job(BASE_PLATE, List.of(), List.of(setUp(Side.TOP, 0, new UndecidedHolding())));
        Plan plan = Planner.plan(job, HoldingShop.bare());
        assertThat(plan.drawnUp().setUps().get(0).holding().kind()).isEqualTo(DrawnHolding.Kind.TABLE);
    }

    /** One pair of blocks does not do for four straps: a parallel across under those of either end. */
    @Test
    void a_plate_of_four_straps_stands_on_parallels_where_the_blocks_are_too_few() {
        Job job = HoldingJobs.job(
                BASE_PLATE,
                List.of(HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 3, "200 mm", 3, "100 mm")),
                List.of());
        Plan plan = Planner.plan(job, BearingBlock.shop());
        DrawnTable table = (DrawnTable) plan.drawnUp().setUps().get(0).holding();
        assertThat(table.packing().value()).isEqualTo("parallels-0.375in");
        assertThat(table.packingHeight().value().text()).isEqualTo("3/4 in");
        assertThat(plan.part().setUps().get(0).fixtures().stream().filter(body -> body.role() == Role.PACKING))
                .hasSize(2);
        assertThat(plan.hold().operations())
                .isNotEmpty()
                .allSatisfy(hold -> assertThat(hold.factor().expected()).isGreaterThan(2));
    }

    /** Table: strapping once 17.5 min, two edges 2.2, first part 20; each part 4 min under straps, 0.35 to brush. */
    @Test
    void a_strapped_plate_takes_the_time_of_straps_and_none_of_a_vise() {
        Plan plan = HoldingJobs.plan(BASE_PLATE, List.of(), List.of(setUp(Side.TOP, 0, new UndecidedHolding())));
        assertThat(plan.time().setUp() / 60).isCloseTo(17.5 + 2 * 1.1 + 20, within(1e-6));
        assertThat(plan.time().each() / 60).isCloseTo(4 + 0.35, within(1e-6));
    }

    @Test
    void the_rows_in_use_name_straps_studs_and_packing() {
        Plan plan = HoldingJobs.plan(
                BASE_PLATE,
                List.of(HoldingJobs.holes("h1", Side.TOP, "10 mm", null, 3, "200 mm", 3, "100 mm")),
                List.of());
        assertThat(RowsInUse.of(plan).stream().map(ShopRow::id)).contains("strap-125", "stud-m12", "blocks-123");
    }

    @Test
    void sides_to_be_faced_come_first_the_larger_before_the_smaller_and_lie_along_the_table() {
        Plan plan = HoldingJobs.plan(
                HoldingJobs.block("60 mm", "100 mm", "40 mm"),
                List.of(
                        HoldingJobs.holes("h1", Side.TOP, "6 mm", "10 mm", 1, "1 mm", 1, "1 mm"),
                        face("f1", Side.FRONT, "98 mm"),
                        face("f2", Side.LEFT, "59 mm"),
                        face("f3", Side.RIGHT, "58 mm")),
                List.of());
        assertThat(plan.drawnUp().setUps().stream().map(setUp -> setUp.up().value()))
                .containsExactly(Side.LEFT, Side.RIGHT, Side.FRONT, Side.TOP);
        assertThat(plan.part().setUps())
                .allSatisfy(stage -> assertThat(stage.heights().length())
                        .isGreaterThanOrEqualTo(stage.heights().depth()));
    }

    private static Feature face(String id, Side side, String across) {
        return new Face(id, "", side, HoldingJobs.size(across), null, GotBy.DIAL);
    }
}
