package setwright.plan;

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
import setwright.job.Dovetail;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.Keyseat;
import setwright.job.RoundBar;
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
class SeatsAndSlotsByHandTest {
    private final MilledBlock block = new MilledBlock();

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
        OperationStage stage = block.stage(
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
        assertThat(MilledBlock.removed(stage)).isCloseTo(1570.8, within(0.5));
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
        block.plan(job, AluminiumBlock.drawer());
        OperationStage stage = block.plan().part().operation("key1-keyseat").orElseThrow();
        double crown = block.plan().part().setUps().get(0).heights().finishedTop();
        assertThat(block.cutter("key1-keyseat")).isEqualTo("slot-drill-hss-8x11-shank10");
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
        block.plan(job, AluminiumBlock.drawer().with(List.of(head)));
        OperationStage neck = block.plan().part().operation("t1-slot").orElseThrow();
        OperationStage under = block.plan().part().operation("t1-t-slot").orElseThrow();
        assertThat(MilledBlock.removed(neck)).isCloseTo(16000, within(1e-6));
        assertThat(MilledBlock.removed(under)).isCloseTo(6400, within(1e-6));
        assertThat(under.path().length(Move.Kind.CUT)).isCloseTo(100 + 18 + 4, within(1e-9));
        assertThat(block.cut("t1-t-slot").passes()).isEqualTo(1);
    }

    /**
     * The outline broken by 1 mm at 45° with a spot drill of 90°: its point 0.5 mm below the chamfer, so that its axis runs
     * 0.5 mm beside the walls.
     *
     * <pre>
     * path  2 · (100 + 60) + 2 π · 0.5 round the corners  = 323.14 mm
     * tip   1 + 0.5                                       = 1.5 mm below the side
     * feed  2 teeth at 2720 rev/min, fz                   = 261 / (2 · 2720) = 0.048 mm
     * gone  the triangle 1 · 1 / 2                        = 0.5 mm²
     * arc   at its middle 0.5 wide, 2 · (0.5 + 0.5) = 2 across: acos(1 - 2 · 0.5 / 2) = 1.047
     * chip  hm = 2 · 0.048 · cos 45° · 0.5 / (1.047 · 2)  = 0.0162 mm
     * force kc = 800 · 0.0162^-0.25                       = 2242 N/mm²
     * power P  = 0.5 · 261 · 2242 / 60e6                  = 0.0049 kW
     * </pre>
     */
    @Test
    void the_edges_of_a_side_are_chamfered_with_a_cone() {
        OperationStage stage = block.stage(
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
        OperationCut chamfer = block.cut("chamfer1-chamfer");
        assertThat(Unit.MM_PER_MIN.fromInside(chamfer.feed().inside())).isCloseTo(261, within(1.0));
        assertThat(chamfer.power().inside()).isCloseTo(4.9, within(0.3));
        assertThat(block.plan().notChecked()).isEmpty();
    }

    /**
     * Dovetail 40 wide, 10 deep, 60°: between its flanks 40 - 2 · 10 / tan 60° = 28.45 mm, slotted by 25 in two lanes.
     */
    @Test
    void a_dovetail_is_slotted_first_and_says_what_it_lacks() {
        OperationStage stage = block.stage(
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
        assertThat(MilledBlock.removed(stage)).isCloseTo(28.453 * 10 * 100, within(1.0));
        assertThat(block.plan().notChecked())
                .extracting(NotChecked::operation)
                .contains("tail1-dovetail")
                .doesNotContain("tail1-slot");
    }
}
