package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.AluminiumBlock.middle;
import static setwright.plan.AluminiumBlock.mm;
import static setwright.plan.AluminiumBlock.size;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.Chamfer;
import setwright.job.Dovetail;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.job.WoodruffSeat;
import setwright.plan.part.OperationStage;

/** What each operation takes from the aluminium block, 100 x 60 x 25, against elementary geometry. */
class RemovedVolumeTest {
    private static final double L = 100;
    private static final double W = 60;
    private static final double H = 25;

    /** Volumes of cuts that do not meet, of one another. */
    private static final double EXACT = 1e-6;

    private static Plan plan(Feature... features) {
        return AluminiumBlock.plan(features);
    }

    private static double removed(Plan plan, String operation) {
        OperationStage stage = plan.part().operation(operation).orElseThrow();
        return stage.before().bulk().volume() - stage.after().bulk().volume();
    }

    private static void takes(double volume, double tolerance, String operation, Feature... features) {
        assertThat(removed(plan(features), operation)).isCloseTo(volume, within(tolerance * volume));
    }

    @Test
    void a_face_takes_a_slab() {
        takes(L * W * 2, EXACT, "face1-face", new Face("face1", "", Side.TOP, size("23 mm"), null, GotBy.MEASURED));
    }

    @Test
    void a_slot_through_both_ends_takes_a_bar() {
        takes(L * 12 * 8, EXACT, "slot1-slot", AluminiumBlock.openSlot());
    }

    @Test
    void a_slot_narrower_than_every_cutter_but_one_takes_no_more_than_that_leaves() {
        Slot slot =
                new Slot("slot1", "", Side.TOP, size("13 mm"), size("8 mm"), size("40 mm"), middle(), null, GotBy.TOOL);
        takes((Math.PI * 6.5 * 6.5 + 27 * 13) * 8, EXACT, "slot1-slot", slot);
    }

    @Test
    void a_step_along_an_edge_takes_a_bar() {
        takes(
                L * 10 * 6,
                EXACT,
                "step1-step",
                new Step(
                        "step1",
                        "",
                        Side.TOP,
                        setwright.job.Edge.LOW,
                        size("10 mm"),
                        size("6 mm"),
                        null,
                        null,
                        GotBy.TOOL));
    }

    @Test
    void a_pocket_takes_a_block_less_its_corners() {
        Pocket pocket = new Pocket(
                "pocket1",
                "",
                Side.TOP,
                size("40 mm"),
                size("30 mm"),
                size("5 mm"),
                mm("6 mm"),
                middle(),
                null,
                GotBy.TOOL);
        takes((40 * 30 - (4 - Math.PI) * 36) * 5, EXACT, "pocket1-pocket", pocket);
    }

    /** 10 deep at full diameter, point of 118 degrees; spotted before by a spot drill of its own size, 90 degrees. */
    @Test
    void a_blind_hole_takes_a_cylinder_and_its_point() {
        Hole hole = hole(Hole.Make.PLAIN, "6 mm", "10 mm");
        double point = 3 / Math.tan(Math.toRadians(59));
        double hollow = Math.PI * 9 * (10 + point / 3);
        double cone = Math.PI * 27 / 3;
        takes(cone, EXACT, "s1-spot", hole);
        takes(hollow - cone, 1e-4, "hole1-drill", hole);
    }

    private static Hole hole(Hole.Make make, String size, String depth) {
        return new Hole(
                "hole1",
                "",
                Side.TOP,
                make,
                size(size),
                null,
                null,
                size(depth),
                new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(mm("0 mm"), mm("0 mm")))),
                null,
                GotBy.TOOL);
    }

    /** The block less a frustum: L W h - ∫ (L - 2x)(W - 2x) dx from 0 to w, at 45 degrees h = w. */
    @Test
    void a_chamfer_round_the_outline_takes_four_mitred_wedges() {
        double w = 1.5;
        Chamfer chamfer = new Chamfer(
                "chamfer1",
                "",
                Side.TOP,
                Chamfer.OUTLINE,
                size("1.5 mm"),
                AluminiumBlock.angle("45 deg"),
                null,
                GotBy.TOOL);
        takes(w * w * (L + W) - 4 * w * w * w / 3, 1e-4, "chamfer1-chamfer", chamfer);
    }

    /** Neck 12 x 8 on the way in, then a head of 21 x 9 under it, the neck's share of it gone already. */
    @Test
    void a_t_slot_takes_its_neck_and_then_its_head() {
        TSlot slot = new TSlot(
                "tslot1",
                "",
                Side.TOP,
                size("12 mm"),
                size("17 mm"),
                size("21 mm"),
                size("9 mm"),
                null,
                middle(),
                null,
                GotBy.TOOL);
        takes(L * 12 * 17, EXACT, "tslot1-slot", slot);
        takes(L * (21 - 12) * 9, EXACT, "tslot1-t-slot", slot);
    }

    /** 30 wide at its foot, 6 deep, flanks of 60 degrees: open 30 - 12 / tan 60. */
    @Test
    void a_dovetail_takes_a_slot_and_then_two_triangles() {
        double flank = 6 / Math.tan(Math.toRadians(60));
        Dovetail tail = new Dovetail(
                "tail1",
                "",
                Side.TOP,
                false,
                size("30 mm"),
                size("6 mm"),
                AluminiumBlock.angle("60 deg"),
                middle(),
                null,
                GotBy.TOOL);
        takes(L * (30 - 2 * flank) * 6, EXACT, "tail1-slot", tail);
        takes(L * flank * 6, 1e-4, "tail1-dovetail", tail);
    }

    @Test
    void a_kerf_across_an_end_takes_its_width() {
        Slit slit = new Slit("slit1", "", Side.LEFT, size("2 mm"), size("15 mm"), null, middle(), null, GotBy.TOOL);
        takes(W * 15 * 2, EXACT, "slit1-saw", slit);
    }

    @Test
    void a_part_sawn_in_two_loses_the_kerf_alone() {
        Slit slit = new Slit("slit1", "", Side.FRONT, size("2 mm"), null, null, middle(), null, GotBy.TOOL);
        takes(L * W * 2, EXACT, "slit1-saw", slit);
    }

    /** A segment of the cutter's circle: R² acos((R - d) / R) - (R - d) √(2 R d - d²), as thick as the cutter. */
    @Test
    void a_woodruff_seat_takes_a_segment_of_its_cutter() {
        double radius = 12.7 * 5 / 8;
        double thick = 25.4 * 5 / 32;
        WoodruffSeat seat = new WoodruffSeat(
                "seat1",
                "",
                Side.FRONT,
                size("25 mm"),
                "505",
                size("5/32 in"),
                size("5/8 in"),
                size("0.2 in"),
                new Placed(Pattern.Datum.CENTRE, mm("0 mm"), mm("0 mm"), null),
                null,
                GotBy.TOOL);
        double deep = 5.08 + 12.5 - Math.sqrt(12.5 * 12.5 - thick * thick / 4);
        double segment = radius * radius * Math.acos((radius - deep) / radius)
                - (radius - deep) * Math.sqrt(2 * radius * deep - deep * deep);
        takes(segment * thick, 1e-4, "seat1-woodruff", seat);
    }

    @Test
    void what_two_slots_share_is_taken_once() {
        Slot along = AluminiumBlock.openSlot();
        Slot across = new Slot(
                "slot2",
                "",
                Side.TOP,
                size("10 mm"),
                size("5 mm"),
                null,
                new Placed(Pattern.Datum.CENTRE, mm("0 mm"), mm("0 mm"), AluminiumBlock.angle("90 deg")),
                null,
                GotBy.TOOL);
        Plan plan = plan(along, across);
        double both = removed(plan, "slot1-slot") + removed(plan, "slot2-slot");
        double asked = L * 12 * 8 + W * 10 * 5 - 12 * 10 * 5;
        assertThat(both).isCloseTo(asked, within(1e-4 * asked));
    }

    @Test
    void mass_follows_the_stock_from_set_up_to_set_up() {
        Plan plan = plan(
                new Face("face1", "", Side.TOP, size("23 mm"), null, GotBy.MEASURED),
                new Slot("slot1", "", Side.BOTTOM, size("12 mm"), size("8 mm"), null, middle(), null, GotBy.TOOL));
        double start = plan.part().setUps().get(1).start().bulk().volume();
        assertThat(start).isCloseTo(L * W * (H - 2), within(EXACT * start));
    }
}
