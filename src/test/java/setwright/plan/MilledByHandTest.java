package setwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.AluminiumBlock.mm;
import static setwright.plan.AluminiumBlock.size;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.geometry.Move;
import setwright.geometry.Side;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Corner;
import setwright.job.Dovetail;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.Keyseat;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.RoundBar;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;
import setwright.shop.Kept;
import setwright.shop.ShankForm;
import setwright.shop.TSlotCutter;
import setwright.shop.ToolMaterial;

/**
 * Milled features of the aluminium block from inputs to final figures, worked on paper in the comments. Kienzle with
 * kc1.1 800, mc 0.25 (tool-maker catalogue 2022 p.111, ISO 513 group N22); power P = Q kc / 60000 with the mean chip
 * (tool-maker milling catalogue 2021-22, formula page 783), which lies up
 * to 4 % above the integral over the arc; HSS end mills at 75 m/min (the shop's row).
 */
class MilledByHandTest {
    private Plan plan = AluminiumBlock.plan();

    private OperationStage stage(String operation, Feature... features) {
        plan = Planner.plan(AluminiumBlock.with(features), AluminiumBlock.drawer());
        return plan.part().operation(operation).orElseThrow();
    }

    private OperationCut cut(String operation) {
        return plan.cut().operation(operation).orElseThrow();
    }

    private static double removed(OperationStage stage) {
        return stage.before().bulk().volume() - stage.after().bulk().volume();
    }

    /**
     * Slot drill 12 with 2 flutes, slot 12 wide and 8 deep, open at both ends of 100 mm.
     *
     * <pre>
     * wanted   n  = 1000 · 75 / (π · 12)             = 1989 rev/min; steps 1750 and 2720: 1750
     * feed     vf = 1750 · 2 · 0.06                  = 210 mm/min
     * depth    8 in passes of at most 12 / 2         = 2 of 4 mm
     * path     2 · (100 + 12 + 2 · 2)                = 232 mm
     * gone     12 · 8 · 100                          = 9600 mm³
     * chip     hm = 2 · 0.06 / π                     = 0.0382 mm
     * force    kc = 800 · 0.0382^-0.25               = 1810 N/mm²
     * power    P  = 12 · 4 · 210 · 1810 / 60e6       = 0.304 kW
     * torque   M  = 9550 · 0.304 / 1750              = 1.66 N·m
     * time     (232 + 2 · 2) / 210 min               = 67.4 s
     * </pre>
     */
    @Test
    void an_open_slot_comes_out_as_by_hand() {
        OperationStage stage = stage("slot1-slot", AluminiumBlock.openSlot());
        OperationCut slot = cut("slot1-slot");
        assertThat(Unit.RPM.fromInside(slot.wantedSpeed().inside())).isCloseTo(1989, within(1.0));
        assertThat(Unit.RPM.fromInside(slot.speed().inside())).isCloseTo(1750, within(0.5));
        assertThat(Unit.MM_PER_MIN.fromInside(slot.feed().inside())).isCloseTo(210, within(1.0));
        assertThat(slot.passes()).isEqualTo(2);
        assertThat(slot.depth()).isCloseTo(4, within(1e-9));
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(232, within(1e-9));
        assertThat(removed(stage)).isCloseTo(9600, within(1e-6));
        assertThat(slot.power().inside()).isCloseTo(304, within(12.0));
        assertThat(Unit.N_M.fromInside(slot.torque().inside())).isCloseTo(1.66, within(0.07));
        assertThat(plan.time().operation("slot1-slot").orElseThrow().cutting()).isCloseTo(67.4, within(0.5));
        assertThat(requireNonNull(slot.milling()).teethEngaged()).isCloseTo(1, within(1e-9));
    }

    /**
     * Closed slot 40 long, 5 deep, by the same slot drill: one pass, down at one end and 40 - 12 = 28 mm along.
     *
     * <pre>
     * gone  (28 · 12 + π 6²) · 5 = 2245.5 mm³
     * </pre>
     */
    @Test
    void a_closed_slot_is_entered_from_above_and_leaves_round_ends() {
        OperationStage stage = stage("slot1-slot", AluminiumBlock.closedSlot());
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(28, within(1e-9));
        assertThat(stage.path().length(Move.Kind.PLUNGE)).isCloseTo(5, within(1e-9));
        assertThat(cut("slot1-slot").passes()).isEqualTo(1);
        assertThat(removed(stage)).isCloseTo(2245.5, within(0.1));
        assertThat(plan.drawnUp().setUps().get(0).operations().get(0).cutter().value())
                .isEqualTo("slot-drill-hss-12x16-shank12");
    }

    /**
     * Pocket 40 x 30, corners 6, 5 deep, by the slot drill 12: one pass, down at one end of its middle line, one ring.
     *
     * <pre>
     * rings  (30 - 12) / 2 = 9, at most 0.75 · 12 = 9 a ring                    = 1
     * path   line 40 - 12 - 2 · 9 = 10; to the ring √(19² + 9²) = 21.02; ring 2 · (28 + 18) = 92
     *                                                                           = 123.02 mm
     * gone   (40 · 30 - (4 - π) · 6²) · 5                                       = 5845.5 mm³
     * </pre>
     */
    @Test
    void a_pocket_is_cleared_from_the_inside_out() {
        OperationStage stage = stage(
                "pocket1-pocket",
                new Pocket(
                        "pocket1",
                        "",
                        Side.TOP,
                        size("40 mm"),
                        size("30 mm"),
                        size("5 mm"),
                        mm("6 mm"),
                        AluminiumBlock.middle(),
                        null,
                        GotBy.TOOL));
        assertThat(cutter("pocket1-pocket")).isEqualTo("slot-drill-hss-12x16-shank12");
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(123.02, within(0.01));
        assertThat(removed(stage)).isCloseTo(5845.5, within(0.6));
        assertThat(requireNonNull(cut("pocket1-pocket").milling()).teethEngaged())
                .as("the first round is cut in the full")
                .isCloseTo(1, within(1e-9));
        assertThat(plan.notChecked()).isEmpty();
    }

    /**
     * Step 10 wide and 6 deep along the back, by the end mill 14 with 4 flutes, conventional.
     *
     * <pre>
     * wanted n  = 75000 / (π · 14) = 1705 rev/min; steps 1115, 1750: 1750
     * feed   vf = 1750 · 4 · 0.075 = 525 mm/min
     * path   100 + 14 + 2 · 2      = 118 mm; the wall on the left of the feed: from right to left
     * gone   10 · 6 · 100          = 6000 mm³
     * arc    φ  = arccos(1 - 20 / 14)           = 115.4° = 2.014 rad
     * chip   hm = 0.075 · (20 / 14) / 2.014     = 0.0532 mm
     * force  kc = 800 · 0.0532^-0.25            = 1666 N/mm²
     * power  P  = 10 · 6 · 525 · 1666 / 60e6    = 0.875 kW
     * </pre>
     */
    @Test
    void a_step_is_milled_along_its_edge_with_the_wall_on_the_left() {
        OperationStage stage = stage(
                "step1-step",
                new Step("step1", "", Side.TOP, Edge.HIGH, size("10 mm"), size("6 mm"), null, null, GotBy.TOOL));
        OperationCut step = cut("step1-step");
        assertThat(cutter("step1-step")).isEqualTo("end-mill-hss-14x26-shank12");
        assertThat(step.passes()).isEqualTo(1);
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(118, within(1e-9));
        Move cut = stage.path().only(Move.Kind.CUT).moves().get(0);
        assertThat(cut.from().x()).isCloseTo(59, within(1e-9));
        assertThat(cut.from().y())
                .as("10 mm in from the back at 30, less the radius")
                .isCloseTo(27, within(1e-9));
        assertThat(removed(stage)).isCloseTo(6000, within(1e-6));
        assertThat(Unit.MM_PER_MIN.fromInside(step.feed().inside())).isCloseTo(525, within(1.0));
        assertThat(step.power().inside()).isCloseTo(875, within(26.0));
    }

    @Test
    void a_step_at_the_front_is_milled_from_left_to_right() {
        OperationStage stage = stage(
                "step1-step",
                new Step(
                        "step1", "", Side.TOP, Edge.LOW, size("10 mm"), size("6 mm"), size("30 mm"), null, GotBy.TOOL));
        Move cut = stage.path().only(Move.Kind.CUT).moves().get(0);
        assertThat(cut.from().x()).isCloseTo(-59, within(1e-9));
        assertThat(cut.to().x())
                .as("30 mm from the left end at -50, less the radius")
                .isCloseTo(-27, within(1e-9));
        assertThat(removed(stage)).isCloseTo(1800, within(1e-6));
    }

    /**
     * Outline 90 x 50 with corners 10, 5 mm inside the block all round, 8 deep, by the end mill 20.
     *
     * <pre>
     * path  2 · 70 + 2 · 30 + 2 π · 20, in and out 2 · (20 + 2)       = 369.66 mm
     * gone  (100 · 60 - 90 · 50 + (4 - π) · 10²) · 8                  = 12686.7 mm³
     * width 5 + the corner: √2 · 15 - 10 = 11.21 at most, set as        11.25 mm
     * </pre>
     */
    @Test
    void an_outline_is_milled_round_outside() {
        OperationStage stage = stage(
                "profile1-profile",
                new ProfileCut(
                        "profile1",
                        "",
                        Side.TOP,
                        false,
                        List.of(corner(5, 5), corner(95, 5), corner(95, 55), corner(5, 55)),
                        size("8 mm"),
                        null,
                        GotBy.TOOL));
        assertThat(cutter("profile1-profile")).isEqualTo("end-mill-hss-20x38-shank20");
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(369.66, within(0.01));
        assertThat(removed(stage)).isCloseTo(12686.7, within(1.0));
        assertThat(cut("profile1-profile").width()).isCloseTo(11.25, within(1e-9));
    }

    private static Corner corner(int u, int v) {
        return new Corner(mm(u + " mm"), mm(v + " mm"), mm("10 mm"));
    }

    /**
     * The right end rounded with the full radius 30, through 25 and 0.5 mm over-run, by the end mill 12 with 26 of flutes.
     *
     * <pre>
     * passes 25.5 / 6 = 4.25                  = 5
     * path   5 · (π · 36 + 2 · (6 + 2))       = 645.5 mm
     * gone   (30 · 60 - π · 30² / 2) · 25     = 9657 mm³
     * </pre>
     */
    @Test
    void an_end_is_rounded_about_its_axis() {
        OperationStage stage = stage(
                "end1-profile", new RadiusEnd("end1", "", Side.TOP, Edge.RIGHT, size("30 mm"), null, null, GotBy.TOOL));
        assertThat(cutter("end1-profile")).isEqualTo("end-mill-hss-12x26-shank12");
        assertThat(cut("end1-profile").passes()).isEqualTo(5);
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(645.5, within(0.1));
        assertThat(removed(stage)).isCloseTo(9657, within(1.0));
    }

    /**
     * Slot along 90° of a circle of radius 20 about the middle, 10 wide and 4 deep, by the slot drill 10.
     *
     * <pre>
     * path  π / 2 · 20                          = 31.42 mm
     * gone  (10 · 31.42 + π 5²) · 4             = 1570.8 mm³
     * </pre>
     */
    @Test
    void an_arc_slot_runs_round_its_centre() {
        OperationStage stage = stage(
                "arc1-slot",
                new ArcSlot(
                        "arc1",
                        "",
                        Side.TOP,
                        size("10 mm"),
                        size("4 mm"),
                        mm("20 mm"),
                        AluminiumBlock.middle(),
                        AluminiumBlock.angle("0 deg"),
                        AluminiumBlock.angle("90 deg"),
                        null,
                        GotBy.TOOL));
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(31.42, within(0.01));
        assertThat(removed(stage)).isCloseTo(1570.8, within(0.5));
    }

    /**
     * Keyseat 8 wide in a shaft of 30, 4 deep at its side and 25 long.
     *
     * <pre>
     * rise  15 - √(15² - 4²)   = 0.543 mm, so that it goes 4.543 mm below the crown
     * depth 4.543 in passes of at most 8 / 2 = 2
     * path  2 · (25 - 8)       = 34 mm
     * </pre>
     */
    @Test
    void a_keyseat_goes_as_deep_as_its_side_asks() {
        Job job = AluminiumBlock.with(new Keyseat(
                "key1",
                "",
                Side.FRONT,
                size("30 mm"),
                size("8 mm"),
                size("4 mm"),
                Keyseat.From.SIDE,
                size("25 mm"),
                AluminiumBlock.middle(),
                null,
                GotBy.TOOL));
        job = job.withPlan(job.plan()
                .withBlank(new RoundBar(
                        size("30 mm"), size("120 mm"), job.plan().blank().faces())));
        plan = Planner.plan(job, AluminiumBlock.drawer());
        OperationStage stage = plan.part().operation("key1-keyseat").orElseThrow();
        double crown = plan.part().setUps().get(0).heights().finishedTop();
        assertThat(cutter("key1-keyseat")).isEqualTo("slot-drill-hss-8x11-shank10");
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(34, within(1e-9));
        assertThat(crown - stage.lowest()).isCloseTo(4.543, within(0.001));
    }

    /** The neck 10 x 16 deep takes 16000 mm³ on 100 mm, the head 18 x 8 under it 8 · 8 · 100 = 6400 mm³ more. */
    @Test
    void a_t_slot_is_slotted_and_then_undercut_at_its_floor() {
        TSlotCutter head = new TSlotCutter(
                "t-slot-cutter-hss-18x8",
                "T-slot cutter 18 mm, 8 high",
                ToolMaterial.HSS,
                mm("18 mm"),
                mm("12 mm"),
                ShankForm.FLATTED,
                mm("8 mm"),
                mm("70 mm"),
                6,
                mm("8 mm"),
                mm("8 mm"),
                new Kept("drawer 9", 1),
                "from memory: DIN 851");
        Job job = AluminiumBlock.with(new TSlot(
                "t1",
                "",
                Side.TOP,
                size("10 mm"),
                size("16 mm"),
                size("18 mm"),
                size("8 mm"),
                null,
                AluminiumBlock.middle(),
                null,
                GotBy.TOOL));
        plan = Planner.plan(job, AluminiumBlock.drawer().with(List.of(head)));
        OperationStage neck = plan.part().operation("t1-slot").orElseThrow();
        OperationStage under = plan.part().operation("t1-t_slot").orElseThrow();
        assertThat(removed(neck)).isCloseTo(16000, within(1e-6));
        assertThat(removed(under)).isCloseTo(6400, within(1e-6));
        assertThat(under.path().length(Move.Kind.CUT)).isCloseTo(100 + 18 + 4, within(1e-9));
        assertThat(cut("t1-t_slot").passes()).isEqualTo(1);
    }

    /**
     * The outline broken by 1 mm at 45° with a spot drill of 90°: its point 0.5 mm below the chamfer, so that its axis runs
     * 0.5 mm beside the walls.
     *
     * <pre>
     * path  2 · (100 + 60) + 2 π · 0.5 round the corners  = 323.14 mm
     * tip   1 + 0.5                                       = 1.5 mm below the side
     * </pre>
     */
    @Test
    void the_edges_of_a_side_are_chamfered_with_a_cone() {
        OperationStage stage = stage(
                "chamfer1-chamfer",
                new Chamfer(
                        "chamfer1",
                        "",
                        Side.TOP,
                        Chamfer.OUTLINE,
                        size("1 mm"),
                        AluminiumBlock.angle("45 deg"),
                        null,
                        GotBy.TOOL));
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(323.14, within(0.01));
        assertThat(stage.workTop() - stage.lowest()).isCloseTo(1.5, within(1e-9));
        assertThat(cut("chamfer1-chamfer").power().inside()).isBetween(1.0, 100.0);
        assertThat(plan.notChecked()).isEmpty();
    }

    /**
     * Dovetail 40 wide, 10 deep, 60°: between its flanks 40 - 2 · 10 / tan 60° = 28.45 mm, slotted by 25 in two lanes.
     */
    @Test
    void a_dovetail_is_slotted_first_and_says_what_it_lacks() {
        OperationStage stage = stage(
                "tail1-slot",
                new Dovetail(
                        "tail1",
                        "",
                        Side.TOP,
                        false,
                        size("40 mm"),
                        size("10 mm"),
                        AluminiumBlock.angle("60 deg"),
                        AluminiumBlock.middle(),
                        null,
                        GotBy.TOOL));
        assertThat(removed(stage)).isCloseTo(28.453 * 10 * 100, within(1.0));
        assertThat(plan.notChecked())
                .extracting(NotChecked::operation)
                .contains("tail1-dovetail")
                .doesNotContain("tail1-slot");
    }

    private String cutter(String operation) {
        return plan.drawnUp().setUps().get(0).operations().stream()
                .filter(drawn -> drawn.id().equals(operation))
                .map(drawn -> drawn.cutter().value())
                .findFirst()
                .orElseThrow();
    }
}
