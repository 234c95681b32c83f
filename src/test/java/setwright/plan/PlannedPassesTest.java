package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.geometry.Move;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.cut.DepthAdvice;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;
import setwright.quantity.Length;
import setwright.quantity.Power;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.shop.Machine;
import setwright.shop.Shop;

/** The pencil takes passes and feeds that keep every limit, and what is asked about them later says the same. */
class PlannedPassesTest {
    private static final Shop SHOP = BearingBlock.shop();
    private static final List<LimitName> LOADS = List.of(
            LimitName.SPINDLE_POWER,
            LimitName.SPINDLE_TORQUE,
            LimitName.BELT,
            LimitName.TOOL_BREAKAGE,
            LimitName.SHANK_GRIP,
            LimitName.SHANK_PULL_OUT);

    static List<Path> jobs() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("demo-jobs"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static Plan plan(String job) {
        return Planner.plan(BearingBlock.job(Path.of("demo-jobs", job + ".setwright.json"), SHOP), SHOP);
    }

    private static List<DrawnOperation> operations(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .toList();
    }

    private static DrawnOperation operation(Plan plan, String id) {
        return operations(plan).stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double whole(Plan plan, DrawnOperation operation) {
        OperationStage on = plan.part().operation(operation.id()).orElseThrow();
        Heights heights = plan.part().setUps().stream()
                .filter(setUp -> setUp.operations().contains(on))
                .findFirst()
                .orElseThrow()
                .heights();
        return operation.kind() == Operation.Kind.FACE
                ? Math.max(heights.startTop() - heights.finishedTop(), on.workTop() - on.lowest())
                : on.workTop() - on.lowest();
    }

    /** Depths are rounded up to 0.05 mm or a thousandth of an inch, so that no sliver is left; 0.1 mm at least. */
    @ParameterizedTest
    @MethodSource("jobs")
    void the_depth_advice_has_as_many_passes_as_the_pencil_took(Path file) {
        Plan plan = Planner.plan(BearingBlock.job(file, SHOP), SHOP);
        for (DrawnOperation operation : operations(plan)) {
            DepthAdvice advice = plan.depthAdvice(operation.id()).orElse(null);
            if (advice != null
                    && operation.depth().pencilled()
                    && operation.feed().pencilled()) {
                double whole = whole(plan, operation);
                double taken = operation.depth().value().inside();
                assertThat(advice.planned().passes()).as(operation.id()).isEqualTo((int)
                        Math.ceil(whole / taken - 0.02));
                assertThat(taken)
                        .as(operation.id())
                        .isLessThan(1.02 * advice.planned().deepest() + 0.11);
                assertThat(advice.planned().deepest())
                        .isLessThanOrEqualTo(1.001 * advice.most().deepest());
            }
        }
    }

    /** Feeds are printed to a whole mm/min and depths rounded up: 3 % over the four fifths. */
    @ParameterizedTest
    @MethodSource("jobs")
    void a_pencilled_pass_keeps_a_fifth_of_what_bears_it_in_hand(Path file) {
        Plan plan = Planner.plan(BearingBlock.job(file, SHOP), SHOP);
        for (DrawnOperation operation : operations(plan)) {
            OperationCut cut = plan.cut().operation(operation.id()).orElse(null);
            if (cut != null
                    && cut.milling() != null
                    && operation.feed().pencilled()
                    && operation.depth().pencilled()) {
                assertThat(cut.limits())
                        .filteredOn(limit -> LOADS.contains(limit.name()))
                        .allSatisfy(limit -> assertThat(limit.used()).isLessThan(0.83));
            }
        }
    }

    private static double used(Plan plan, String operation, LimitName name) {
        return plan.cut().operation(operation).orElseThrow().limits().stream()
                .filter(limit -> limit.name() == name)
                .mapToDouble(Limit::used)
                .findFirst()
                .orElse(0);
    }

    @Test
    void a_deeper_pass_uses_more_of_all_that_bears_it() {
        Plan slot = plan("everyday/gib-slot");
        Rounds.each(81, (random, round) -> {
            double depth = 0.3 + 5 * random.nextDouble();
            double deeper = depth + (6 - depth) * random.nextDouble();
            Plan light = deep(slot, depth);
            Plan heavy = deep(slot, deeper);
            for (LimitName name : LOADS) {
                assertThat(used(heavy, "o1", name))
                        .as(name + " at " + depth + " and " + deeper)
                        .isGreaterThanOrEqualTo(used(light, "o1", name) * (1 - 1e-6));
            }
        });
    }

    private static Plan deep(Plan plan, double mm) {
        Typed<Length> value = new Typed<>(mm + " mm", new Length(mm));
        return Planner.plan(Edits.set(plan.drawnUp(), "o1", OperationField.DEPTH, Plannable.inked(value)), SHOP);
    }

    @Test
    void a_stronger_machine_never_gets_less_depth() {
        Job job = BearingBlock.job(Path.of("demo-jobs/everyday/gib-slot.setwright.json"), SHOP);
        Rounds.each(82, (random, round) -> {
            double watts = 100 + 2000 * random.nextDouble();
            double more = watts * (1 + random.nextDouble());
            DepthAdvice weak =
                    Planner.plan(job, withPower(watts)).depthAdvice("o1").orElseThrow();
            DepthAdvice strong =
                    Planner.plan(job, withPower(more)).depthAdvice("o1").orElseThrow();
            assertThat(strong.most().deepest())
                    .as(watts + " and " + more)
                    .isGreaterThanOrEqualTo(weak.most().deepest() * (1 - 1e-3));
            assertThat(strong.planned().passes())
                    .isLessThanOrEqualTo(weak.planned().passes());
        });
    }

    private static Shop withPower(double watts) {
        Machine machine = SHOP.all(Machine.class).stream()
                .filter(row -> row.id().equals("knee-mill-r8-9x49"))
                .findFirst()
                .orElseThrow();
        return SHOP.with(List.of(changed(machine, "power", new Typed<>(watts + " W", new Power(watts)))));
    }

    private static Machine changed(Machine machine, String name, Object value) {
        try {
            RecordComponent[] parts = Machine.class.getRecordComponents();
            Object[] values = new Object[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = parts[i].getName().equals(name)
                        ? value
                        : parts[i].getAccessor().invoke(machine);
            }
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return Machine.class.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new AssertionError(impossible);
        }
    }

    /**
     * 12 P9 allows 0.043 mm. At size the run-out of 0.026 and a pull of 0.019 make it 0.045 wide; a 10 mm cutter goes along
     * both sides, and along both again for the last quarter of a millimetre.
     *
     * <pre>
     * each way  60 - 12 + 2 · (√(1² - 1²))  = 48 mm, four of them with 10 mm that go straight down
     * </pre>
     */
    @Test
    void a_toleranced_keyseat_that_would_come_wide_is_cut_on_both_sides_and_finished() {
        Plan shaft = plan("declination-shaft");
        DrawnOperation keyseat = operation(shaft, "keyseat1-keyseat");
        assertThat(keyseat.cutter().value()).isEqualTo("slot-drill-hss-10x13-shank10");
        assertThat(keyseat.finish().value().text()).isEqualTo("0.25 mm");
        assertThat(keyseat.lastPass().value()).isEqualTo(Operation.LastPass.ONE);
        OperationStage on = shaft.part().operation("keyseat1-keyseat").orElseThrow();
        assertThat(on.runs()).as("once round, and once more for the last pass").isEqualTo(2);
        assertThat(on.path().length(Move.Kind.CUT))
                .as("along the middle, 1 aside, then two rounds 1 from the middle")
                .isCloseTo(48 + 1 + 2 * (2 * 48 + 2 * Math.PI * 1), within(0.1));
    }

    @Test
    void a_keyseat_that_keeps_its_limits_is_cut_at_size() {
        DrawnOperation keyseat = operation(plan("everyday/keyed-stub-inch"), "keyseat1-keyseat");
        assertThat(keyseat.cutter().value()).contains("0.250");
        assertThat(keyseat.lastPass().value()).isEqualTo(Operation.LastPass.NONE);
    }

    /**
     * A pocket whose size is toleranced goes round once more along its walls, 2 · (38 + 18) mm, the cutter's radius from
     * them.
     */
    @Test
    void a_toleranced_pocket_goes_round_once_more() {
        Plan seat = plan("everyday/encoder-seat");
        Plan lid = plan("everyday/pocketed-lid");
        assertThat(operation(seat, "pocket1-pocket").finish().value().text()).isEqualTo("0.25 mm");
        assertThat(operation(lid, "pocket1-pocket").finish().value().inside()).isZero();
        double more = seat.part().operation("pocket1-pocket").orElseThrow().cutLength()
                - lid.part().operation("pocket1-pocket").orElseThrow().cutLength();
        assertThat(more).isCloseTo(2 * (38 + 18), within(1e-6));
        assertThat(seat.time().operation("pocket1-pocket").orElseThrow().cutting())
                .isGreaterThan(
                        lid.time().operation("pocket1-pocket").orElseThrow().cutting());
    }

    /**
     * Drill 25 mm in aluminium, Kd 7000, 0.375 mm a turn; the spindle has 2 hp · 0.75 = 1.12 kW.
     *
     * <pre>
     * M = 0.000025 · 7000 · 0.375^0.8 · 25^1.8 · 1.082   = 28.4 N·m
     * P = 28.4 · 660 / 9550                              = 1.96 kW; half the feed takes 0.5^0.8 = 0.574 of it: 1.13 kW
     * P = 28.4 · 325 / 9550                              = 0.965 kW, less than nine tenths of 1.12
     * </pre>
     */
    @Test
    void a_drill_that_asks_too_much_at_half_the_feed_turns_slower() {
        OperationCut drill =
                plan("everyday/bored-ring-block").cut().operation("hole1-drill").orElseThrow();
        assertThat(Unit.RPM.fromInside(drill.speed().inside())).isCloseTo(325, within(0.5));
        assertThat(drill.feedPerEdge().inside()).isCloseTo(0.375, within(0.001));
        assertThat(Unit.N_M.fromInside(drill.torque().inside())).isCloseTo(28.4, within(0.2));
        assertThat(drill.power().inside()).isCloseTo(965, within(8.0));
    }

    /**
     * Head 21 x 9 of 8 teeth under a neck of 12 in mild steel (kc1.1 1350, mc 0.21), 325 rev/min, 70 mm/min. Mean chip and
     * power as the tool-maker's milling catalogue 2021-22 has them (p. 783), which lies up to 4 % above the integral.
     *
     * <pre>
     * feed   fz = 70 / (325 · 8)                   = 0.0269 mm
     * sides  (21 - 12) / 2                         = 4.5 mm each
     * arc    φs = acos(1 - 2 · 4.5 / 21)           = 0.963 rad
     * chip   hm = 2 · 0.0269 · 4.5 / (21 · 0.963)  = 0.0120 mm
     * force  kc = 1350 · 0.0120^-0.21              = 3417 N/mm²
     * power  P  = 2 · 4.5 · 9 · 70 · 3417 / 60e6   = 0.323 kW
     * torque M  = 9550 · 0.323 / 325               = 9.49 N·m
     * </pre>
     */
    @Test
    void the_head_of_a_t_slot_comes_out_as_by_hand() {
        OperationCut head =
                plan("everyday/tee-slot-rail").cut().operation("tslot1-t-slot").orElseThrow();
        assertThat(Unit.MM_PER_MIN.fromInside(head.feed().inside())).isCloseTo(70, within(0.5));
        assertThat(head.power().inside()).isBetween(0.96 * 323, 1.0 * 325);
        assertThat(Unit.N_M.fromInside(head.torque().inside())).isBetween(0.96 * 9.49, 1.005 * 9.49);
    }
}
