package setwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.AluminiumBlock.mm;
import static setwright.plan.AluminiumBlock.size;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.DrawnOperation;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;
import setwright.shop.BoringBar;
import setwright.shop.Counterbore;
import setwright.shop.Countersink;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Kept;
import setwright.shop.ShankForm;
import setwright.shop.ShopRow;
import setwright.shop.Taper;
import setwright.shop.ToolMaterial;

/**
 * Mouths of holes and bored holes in the aluminium block, from inputs to final figures on paper: drilling after
 * Machinery's Handbook 31st ed. p.1152 with Kd 7000 (from memory, as in the shop's row), lips and chisel beside a pilot
 * hole as its factors say; boring by kc with kc1.1 800, mc 0.25 (tool-maker catalogue 2022 p.111, group N22).
 */
class MouthsByHandTest {
    private static final Kept DRAWER = new Kept("drawer 9", 1);

    private static Plan plan(Hole hole, ShopRow... more) {
        Job job = AluminiumBlock.with(hole);
        return Planner.plan(job, BearingBlock.shop().with(List.of(more)));
    }

    private static Hole hole(Hole.Make make, String size, @Nullable String thread, Hole.@Nullable Mouth mouth) {
        return new Hole(
                "hole1",
                "",
                Side.TOP,
                make,
                size(size),
                thread,
                null,
                null,
                new Pattern.Points(Pattern.Datum.CENTRE, List.of(new Pattern.Place(mm("20 mm"), mm("10 mm")))),
                null,
                mouth,
                GotBy.TOOL);
    }

    private static Countersink countersink(String diameter) {
        return new Countersink(
                "countersink-hss-90deg-test-" + diameter.replace(' ', '-'),
                "Countersink 90 degrees " + diameter,
                ToolMaterial.HSS,
                mm(diameter),
                mm("6 mm"),
                ShankForm.PLAIN,
                mm("12 mm"),
                mm("50 mm"),
                3,
                AluminiumBlock.angle("90 deg"),
                DRAWER,
                "from memory: DIN 335 C");
    }

    private static Counterbore counterbore() {
        return new Counterbore(
                "counterbore-hss-m6-test",
                "Counterbore M6",
                ToolMaterial.HSS,
                mm("11 mm"),
                mm("8 mm"),
                ShankForm.PLAIN,
                mm("20 mm"),
                mm("80 mm"),
                3,
                mm("6.6 mm"),
                false,
                "M6",
                DRAWER,
                "from memory: DIN 373");
    }

    private static List<Operation.Kind> kinds(Plan plan, int setUp) {
        return plan.drawnUp().setUps().get(setUp).operations().stream()
                .map(DrawnOperation::kind)
                .toList();
    }

    private static double removed(Plan plan, String operation) {
        OperationStage stage = plan.part().operation(operation).orElseThrow();
        return stage.before().bulk().volume() - stage.after().bulk().volume();
    }

    /**
     * Counterbore 11, 6.5 deep, on 6.6 through.
     *
     * <pre>
     * y  = 6.6 / 11 = 0.6; A = (1 - 0.36) / 1.6^0.2 = 0.5826   B = 0.4 / 1.6^0.2 = 0.3641   J = 0
     * gone  π / 4 · (11² - 6.6²) · 6.5                        = 395.3 mm³
     * with f as it comes out:  M = 7000 f^0.8 11^1.8 A / 40000, 11^1.8 = 74.90
     *                          T = 0.05 · 7000 f^0.8 11^0.8 B,  11^0.8 = 6.809
     * </pre>
     */
    @Test
    void a_counterbore_cuts_the_ring_beside_its_hole() {
        Hole.Mouth mouth = new Hole.Mouth(Hole.Mouth.Form.COUNTERBORE, size("11 mm"), size("6.5 mm"), null, null);
        Plan plan = plan(hole(Hole.Make.PLAIN, "6.6 mm", null, mouth), counterbore());
        assertThat(kinds(plan, 0))
                .containsExactly(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.COUNTERBORE);
        assertThat(removed(plan, "hole1-counterbore") + besideTheSpot(plan, 6.6))
                .isCloseTo(395.3, within(0.5));
        OperationCut cut = plan.cut().operation("hole1-counterbore").orElseThrow();
        double f = StrictMath.pow(cut.feedPerEdge().inside(), 0.8);
        assertThat(Unit.N_M.fromInside(cut.torque().inside()))
                .isCloseTo(7000 * f * 74.90 * 0.5826 / 40000, within(0.01));
        assertThat(requireNonNull(cut.thrust()).inside()).isCloseTo(350 * f * 6.809 * 0.3641, within(0.5));
        assertThat(plan.notChecked()).isEmpty();
    }

    /** To 6 + 0.5 wide by a cone of 90°: 3.25 deep at its point; the smallest countersink over that. */
    @Test
    void a_tapped_hole_is_countersunk_before_the_tap_by_the_smallest_that_covers_it() {
        Plan plan = plan(
                hole(Hole.Make.TAPPED, "6 mm", "M6", null),
                countersink("10.4 mm"),
                countersink("6.3 mm"),
                countersink("8.3 mm"));
        assertThat(kinds(plan, 0))
                .containsExactly(
                        Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.COUNTERSINK, Operation.Kind.TAP);
        OperationStage stage = plan.part().operation("hole1-countersink").orElseThrow();
        assertThat(stage.workTop() - stage.lowest()).isCloseTo(3.25, within(1e-9));
        assertThat(plan.cut().operation("hole1-countersink").orElseThrow().width())
                .isCloseTo(6.5, within(1e-9));
        assertThat(plan.notChecked()).isEmpty();
    }

    @Test
    void a_mouth_from_the_other_side_is_opened_with_that_side_up_over_the_hole() {
        Hole.Mouth mouth =
                new Hole.Mouth(Hole.Mouth.Form.COUNTERBORE, size("11 mm"), size("6.5 mm"), null, Side.BOTTOM);
        Plan plan = plan(hole(Hole.Make.PLAIN, "6.6 mm", null, mouth), counterbore());
        assertThat(plan.drawnUp().setUps()).hasSize(2);
        assertThat(kinds(plan, 1)).containsExactly(Operation.Kind.COUNTERBORE);
        OperationStage stage = plan.part().operation("hole1-counterbore").orElseThrow();
        assertThat(stage.spots().get(0).x()).isCloseTo(20, within(1e-9));
        assertThat(stage.spots().get(0).y()).as("turned over about its length").isCloseTo(-10, within(1e-9));
        assertThat(removed(plan, "hole1-counterbore")).isCloseTo(395.3, within(0.5));
    }

    /**
     * Bored to 20 from 13, by a bar in the boring head.
     *
     * <pre>
     * drilled to d; stock s = (20 - d) / 2 on the radius, 0.25 of it left for the last pass
     * rough  n cuts of (s - 0.25) / n, at most 1 each; then half of 0.25, the rest, and a spring pass = n + 3
     * deepest the last rough one, to 19.5 from 19.5 - 2 (s - 0.25) / n; kc = 800 f^-0.25
     * M      (19.5² - from²) f kc / 8000
     * gone   π / 4 · (20² - d²) · 25
     * </pre>
     */
    @Test
    void a_bored_hole_is_drilled_under_size_and_opened_in_passes() {
        BoringBar bar = new BoringBar(
                "boring-bar-hss-test",
                "Boring bar 12 mm",
                ToolMaterial.HSS,
                mm("12 mm"),
                mm("12 mm"),
                ShankForm.PLAIN,
                mm("5 mm"),
                mm("90 mm"),
                1,
                mm("9 mm"),
                mm("50 mm"),
                DRAWER,
                "common practice: typical of its kind");
        Plan plan = plan(hole(Hole.Make.BORED, "20 mm", null, null), bar, boringHead());
        assertThat(kinds(plan, 0)).containsExactly(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.BORE);
        OperationCut cut = plan.cut().operation("hole1-bore").orElseThrow();
        double drilled = diameter(plan, "hole1-drill");
        double stock = (20 - drilled) / 2;
        double rough = StrictMath.ceil(stock - 0.25);
        double from = 19.5 - 2 * (stock - 0.25) / rough;
        double f = cut.feedPerEdge().inside();
        assertThat(cut.passes()).isEqualTo((int) rough + 3);
        assertThat(Unit.N_M.fromInside(cut.torque().inside()))
                .isCloseTo((19.5 * 19.5 - from * from) * f * 800 * StrictMath.pow(f, -0.25) / 8000, within(0.001));
        assertThat(removed(plan, "hole1-bore") + besideTheSpot(plan, drilled))
                .isCloseTo(Math.PI / 4 * (400 - drilled * drilled) * 25, within(0.5));
    }

    /** What a spot of 90° leaves less of the rim of a hole: the cone down to where it is as wide as the hole, less the hole. */
    private static double besideTheSpot(Plan plan, double hole) {
        OperationStage spot = plan.drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .filter(operation -> operation.kind() == Operation.Kind.SPOT)
                .flatMap(operation -> plan.part().operation(operation.id()).stream())
                .findFirst()
                .orElseThrow();
        double wide = spot.workTop() - spot.lowest();
        double narrow = hole / 2;
        double deep = Math.max(0, wide - narrow);
        return Math.PI * deep * ((wide * wide + wide * narrow + narrow * narrow) / 3 - narrow * narrow);
    }

    private static double diameter(Plan plan, String operation) {
        Cutter cutter = plan.drawnUp().setUps().get(0).operations().stream()
                .filter(drawn -> drawn.id().equals(operation))
                .findFirst()
                .flatMap(drawn -> plan.rows().cutter(drawn.cutter().value()))
                .orElseThrow();
        return cutter.diameter().inside();
    }

    private static Holder boringHead() {
        return new Holder(
                "boring-head-r8-test",
                "Boring head, R8",
                Holder.Style.BORING_HEAD,
                Taper.R8,
                mm("60 mm"),
                mm("50 mm"),
                mm("12 mm"),
                mm("12 mm"),
                mm("30 mm"),
                mm("0 mm"),
                mm("0.02 mm"),
                null,
                null,
                true,
                DRAWER,
                "common practice: typical of its kind");
    }
}
