package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Edge;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.GotBy;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.StopAt;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.job.ZeroFinding;
import setwright.plan.BearingBlock;
import setwright.plan.Plan;
import setwright.plan.hold.GripRange;
import setwright.plan.hold.GripRangeWords;
import setwright.quantity.Length;
import setwright.quantity.Printing;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/**
 * A steel block 80 long, 40 between the jaws, 60 high, machined all over, an end stop, firm in a 6 in vise, under a slot
 * 12 wide and 6 deep by a cutter of high-speed steel.
 */
class StopBlockTest {
    private static final Reading READING = new Reading(UnitSystem.METRIC);

    private static Typed<Length> mm(double mm) {
        return READING.length(mm + " mm");
    }

    private static Size size(double mm) {
        return Size.of(mm(mm));
    }

    private static <T> ViseHolding with(ViseHolding holding, ViseField<T> field, T value) {
        return field.write(holding, Plannable.inked(value));
    }

    /** Jaws 44 high: the packing leaves this much of the part in them. */
    private static Bench gripped(double deep) {
        ViseHolding vise = with(ViseHolding.pencilled(), ViseField.VISE, "vise-6in");
        vise = with(vise, ViseField.PARALLELS, "parallels-0.125in");
        vise = with(vise, ViseField.PARALLEL_HEIGHT, mm(44 - deep));
        vise = with(vise, ViseField.GRIP, ViseHolding.GripAsked.FIRM);
        vise = vise.withStops(List.of(new StopAt("stop1", "stop-vise-end", Edge.LEFT, mm(20))));
        Slot slot = new Slot(
                "slot1",
                "slot 12 x 6 deep",
                Side.TOP,
                size(12),
                size(6),
                null,
                new Placed(Pattern.Datum.CENTRE, mm(0), mm(0), null),
                null,
                GotBy.TOOL);
        Job block = BearingBlock.job();
        Map<Side, FaceState> machined = new java.util.EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            machined.put(side, FaceState.MACHINED);
        }
        SetUp setUp = new SetUp("s1", "Slot", Plannable.inked(Side.TOP), 0, vise, ZeroFinding.JAW_AND_STOP, List.of());
        Job job = block.withPlan(block.plan()
                .withBlank(new Block(size(80), size(40), size(60), machined))
                .withRelations(List.of())
                .withReceived(List.of())
                .withFeatures(List.of(slot))
                .withSetUps(List.of(setUp)));
        return Bench.of(job)
                .in(BearingBlock.shop())
                .ink("slot1-slot", OperationField.CUTTER, "end-mill-hss-12x26-shank12");
    }

    private static List<Caution> said(Bench bench) {
        return bench.findings().cautions().stream()
                .filter(caution -> caution.severity() != Severity.NOTE)
                .toList();
    }

    @Test
    void gripped_20_deep_nothing_is_said() {
        assertThat(said(gripped(20))).isEmpty();
    }

    @Test
    void gripped_3_deep_it_is_not_silent() {
        Bench bench = gripped(3);
        assertThat(said(bench))
                .extracting(Caution::slug)
                .containsAnyOf("grip-too-shallow", "tips-in-grip", "lifts-in-grip", "slides-in-grip");
    }

    /** At the least grip one of the two factors stands just at what is asked, and firm is more than that. */
    @Test
    void the_least_grip_is_where_a_factor_is_just_what_is_asked() {
        Plan plan = gripped(20).plan();
        GripRange range = plan.gripRange("s1").orElseThrow();
        double now = plan.hold().operation("slot1-slot").orElseThrow().factor().expected();
        assertThat(range.now()).isEqualTo(15_000);
        assertThat(range.least()).isLessThan(range.now());
        assertThat(range.crosses()).isFalse();
        assertThat(range.most()).isEqualTo(25_000);
        assertThat(now).isGreaterThan(2);
        assertThat(gripped(3).plan().gripRange("s1").orElseThrow().least()).isGreaterThan(range.least());
    }

    /** Half of π² E w h³ / (12 L²): 150 wide, 1.9 thick, 140 between the jaws; firm is 15 kN. */
    @Test
    void a_thin_plate_stands_no_firm_grip_on_its_edges() {
        Job job = gripped(20).job();
        Block plate = new Block(size(150), size(140), size(2), Map.of());
        Face face = new Face("face1", "", Side.TOP, new Size(mm(1.9), mm(1.8), mm(2)), null, GotBy.DIAL);
        Bench thin = Bench.of(job.withPlan(job.plan()
                        .withBlank(plate)
                        .withFeatures(List.of(face))
                        .withSetUps(List.of(job.plan().setUps().get(0).withHolding(ViseHolding.pencilled())))))
                .in(BearingBlock.shop());
        GripRange range = thin.plan().gripRange("s1").orElseThrow();
        assertThat(range.most()).isLessThan(range.now());
        assertThat(range.because()).contains("bows");
        assertThat(new GripRangeWords(range, new Printing(UnitSystem.METRIC)).text())
                .contains("bows");
    }
}
