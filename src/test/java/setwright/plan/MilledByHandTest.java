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
import setwright.job.Corner;
import setwright.job.Edge;
import setwright.job.GotBy;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Step;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;

/**
 * Milled features of the aluminium block from inputs to final figures, worked on paper in the comments. Kienzle with
 * kc1.1 800, mc 0.25 (tool-maker catalogue 2022 p.111, ISO 513 group N22); power P = Q kc / 60000 with the mean chip
 * (tool-maker milling catalogue 2021-22, formula page 783), which lies up
 * to 4 % above the integral over the arc; HSS end mills at 75 m/min (the shop's row).
 */
class MilledByHandTest {
    private final MilledBlock block = new MilledBlock();

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
        OperationStage stage = block.stage("slot1-slot", AluminiumBlock.openSlot());
        OperationCut slot = block.cut("slot1-slot");
        assertThat(Unit.RPM.fromInside(slot.wantedSpeed().inside())).isCloseTo(1989, within(1.0));
        assertThat(Unit.RPM.fromInside(slot.speed().inside())).isCloseTo(1750, within(0.5));
        assertThat(Unit.MM_PER_MIN.fromInside(slot.feed().inside())).isCloseTo(210, within(1.0));
        assertThat(slot.passes()).isEqualTo(2);
        assertThat(slot.depth()).isCloseTo(4, within(1e-9));
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(232, within(1e-9));
        assertThat(MilledBlock.removed(stage)).isCloseTo(9600, within(1e-6));
        assertThat(slot.power().inside()).isCloseTo(304, within(12.0));
        assertThat(Unit.N_M.fromInside(slot.torque().inside())).isCloseTo(1.66, within(0.07));
        assertThat(block.plan().time().operation("slot1-slot").orElseThrow().cutting())
                .isCloseTo(67.4, within(0.5));
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
        OperationStage stage = block.stage("slot1-slot", AluminiumBlock.closedSlot());
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(28, within(1e-9));
        assertThat(stage.path().length(Move.Kind.PLUNGE)).isCloseTo(5, within(1e-9));
        assertThat(block.cut("slot1-slot").passes()).isEqualTo(1);
        assertThat(MilledBlock.removed(stage)).isCloseTo(2245.5, within(0.1));
        assertThat(block.plan()
                        .drawnUp()
                        .setUps()
                        .get(0)
                        .operations()
                        .get(0)
                        .cutter()
                        .value())
                .isEqualTo("slot-drill-hss-12x16-shank12");
    }

    /**
     * Pocket 40 x 30, corners 6, 5 deep, by the slot drill 12: one pass, down at one end of its middle line, two rings.
     *
     * <pre>
     * rings  (30 - 12) / 2 = 9, at most 0.7 · 12 = 8.4 a ring for the corners   = 2
     * path   line 40 - 12 - 2 · 9 = 10; to a ring 4.5 √2 = 6.364, twice; rings 2 · (19 + 9) = 56, 2 · (28 + 18) = 92
     *                                                                           = 170.73 mm
     * gone   (40 · 30 - (4 - π) · 6²) · 5                                       = 5845.5 mm³
     * </pre>
     */
    @Test
    void a_pocket_is_cleared_from_the_inside_out() {
        OperationStage stage = block.stage(
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
        assertThat(block.cutter("pocket1-pocket")).isEqualTo("slot-drill-hss-12x16-shank12");
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(170.73, within(0.01));
        assertThat(MilledBlock.removed(stage)).isCloseTo(5845.5, within(0.6));
        assertThat(requireNonNull(block.cut("pocket1-pocket").milling()).teethEngaged())
                .as("the first round is cut in the full")
                .isCloseTo(1, within(1e-9));
        assertThat(block.plan().notChecked()).isEmpty();
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
        OperationStage stage = block.stage(
                "step1-step",
                new Step("step1", "", Side.TOP, Edge.HIGH, size("10 mm"), size("6 mm"), null, null, GotBy.TOOL));
        OperationCut step = block.cut("step1-step");
        assertThat(block.cutter("step1-step")).isEqualTo("end-mill-hss-14x26-shank12");
        assertThat(step.passes()).isEqualTo(1);
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(118, within(1e-9));
        Move cut = stage.path().only(Move.Kind.CUT).moves().get(0);
        assertThat(cut.from().x()).isCloseTo(59, within(1e-9));
        assertThat(cut.from().y())
                .as("10 mm in from the back at 30, less the radius")
                .isCloseTo(27, within(1e-9));
        assertThat(MilledBlock.removed(stage)).isCloseTo(6000, within(1e-6));
        assertThat(Unit.MM_PER_MIN.fromInside(step.feed().inside())).isCloseTo(525, within(1.0));
        assertThat(step.power().inside()).isCloseTo(875, within(26.0));
    }

    @Test
    void a_step_at_the_front_is_milled_from_left_to_right() {
        OperationStage stage = block.stage(
                "step1-step",
                new Step(
                        "step1", "", Side.TOP, Edge.LOW, size("10 mm"), size("6 mm"), size("30 mm"), null, GotBy.TOOL));
        Move cut = stage.path().only(Move.Kind.CUT).moves().get(0);
        assertThat(cut.from().x()).isCloseTo(-59, within(1e-9));
        assertThat(cut.to().x())
                .as("30 mm from the left end at -50, less the radius")
                .isCloseTo(-27, within(1e-9));
        assertThat(MilledBlock.removed(stage)).isCloseTo(1800, within(1e-6));
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
        OperationStage stage = block.stage(
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
        assertThat(block.cutter("profile1-profile")).isEqualTo("end-mill-hss-20x38-shank20");
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(369.66, within(0.01));
        assertThat(MilledBlock.removed(stage)).isCloseTo(12686.7, within(1.0));
        assertThat(block.cut("profile1-profile").width()).isCloseTo(11.25, within(1e-9));
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
        OperationStage stage = block.stage(
                "end1-profile", new RadiusEnd("end1", "", Side.TOP, Edge.RIGHT, size("30 mm"), null, null, GotBy.TOOL));
        assertThat(block.cutter("end1-profile")).isEqualTo("end-mill-hss-12x26-shank12");
        assertThat(block.cut("end1-profile").passes()).isEqualTo(5);
        assertThat(stage.path().length(Move.Kind.CUT)).isCloseTo(645.5, within(0.1));
        assertThat(MilledBlock.removed(stage)).isCloseTo(9657, within(1.0));
    }
}
