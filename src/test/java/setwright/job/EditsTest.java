package setwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

class EditsTest {
    private static final Typed<Length> SIXTY = mm("60");

    @Test
    void a_pencilled_set_up_is_written_down_before_one_of_its_values_is_inked() {
        Job changed = Edits.set(pencilled(), "drill", OperationField.STICK_OUT, Plannable.inked(SIXTY));

        assertThat(changed.plan().setUps()).extracting(SetUp::id).containsExactly("s1", "s2");
        SetUp first = changed.plan().setUps().get(0);
        assertThat(first.operations()).extracting(Operation::id).containsExactly("spot", "drill", "tap");
        assertThat(first.operations().get(1))
                .isEqualTo(OperationField.STICK_OUT.write(
                        Operation.pencilled("drill", Operation.Kind.DRILL, List.of("hole")), Plannable.inked(SIXTY)));
        assertThat(first.operations().get(0))
                .isEqualTo(Operation.pencilled("spot", Operation.Kind.SPOT, List.of("hole")));
        assertThat(first.holding()).isEqualTo(new UndecidedHolding());
    }

    @Test
    void the_operations_of_the_other_set_ups_stay_to_the_pencil() {
        Job changed = Edits.set(pencilled(), "drill", OperationField.STICK_OUT, Plannable.inked(SIXTY));

        assertThat(changed.plan().setUps().get(1).operations()).isEmpty();
    }

    @Test
    void what_was_already_written_keeps_its_ink() {
        Job once = Edits.set(pencilled(), "drill", OperationField.HOLDER, Plannable.inked("chuck"));
        Job twice = Edits.set(
                new DrawnUp(once, pencilled().setUps()), "drill", OperationField.STICK_OUT, Plannable.inked(SIXTY));

        Operation drill = twice.plan().setUps().get(0).operations().get(1);
        assertThat(drill.holder()).isEqualTo(Plannable.inked("chuck"));
        assertThat(drill.stickOut()).isEqualTo(Plannable.inked(SIXTY));
    }

    @Test
    void a_set_up_and_an_operation_that_came_after_drawing_up_are_kept() {
        Job newer = Edits.set(pencilled(), "drill", OperationField.STICK_OUT, Plannable.inked(SIXTY));
        DrawnUp drawn = pencilled();
        DrawnSetUp withoutTap = drawn.setUps()
                .get(0)
                .withOperations(drawn.setUps().get(0).operations().subList(0, 2));
        DrawnUp older = new DrawnUp(newer, List.of(withoutTap));

        Job changed = Edits.pencil(older, "spot", OperationField.FEED);

        assertThat(changed).isEqualTo(newer);
    }

    @Test
    void inking_keeps_what_the_pencil_has_and_the_pencil_takes_it_back() {
        Job inked = Edits.ink(pencilled(), "drill", OperationField.SPEED);
        Operation drill = inked.plan().setUps().get(0).operations().get(1);
        assertThat(drill.speed()).isEqualTo(Plannable.inked(pencilledSpeed()));

        Job back = Edits.pencil(new DrawnUp(inked, pencilled().setUps()), "drill", OperationField.SPEED);
        assertThat(back.plan().setUps().get(0).operations().get(1).speed()).isEqualTo(Plannable.pencilled());
    }

    @Test
    void inking_a_whole_operation_leaves_ink_and_measurements_as_they_are() {
        Job measured = Edits.set(
                pencilled(), "drill", OperationField.STICK_OUT, new Plannable.Measured<>(SIXTY, "Ada", "2025-05-02"));

        Operation drill = Edits.inkAll(new DrawnUp(measured, pencilled().setUps()), "drill")
                .plan()
                .setUps()
                .get(0)
                .operations()
                .get(1);

        assertThat(drill.stickOut().standing()).isEqualTo(Standing.MEASURED);
        assertThat(OperationField.all())
                .filteredOn(field -> field != OperationField.STICK_OUT)
                .allSatisfy(
                        field -> assertThat(field.ink().apply(drill).standing()).isEqualTo(Standing.INKED));
    }

    @Test
    void each_field_of_an_operation_is_written_where_it_is_read() {
        Operation before = Operation.pencilled("drill", Operation.Kind.DRILL, List.of("hole"));
        for (OperationField<?> field : OperationField.all()) {
            assertWritten(before, field);
        }
        assertThat(OperationField.all()).hasSize(14).doesNotHaveDuplicates();
    }

    private static <T> void assertWritten(Operation before, OperationField<T> field) {
        T value = field.drawn().apply(drawn("drill", Operation.Kind.DRILL)).value();
        Operation after = field.write(before, Plannable.inked(value));
        assertThat(field.ink().apply(after)).as(field.key()).isEqualTo(Plannable.inked(value));
        assertThat(field.write(after, Plannable.pencilled())).isEqualTo(before);
    }

    @Test
    void each_field_of_a_vise_holding_is_written_where_it_is_read() {
        for (ViseField<?> field : ViseField.all()) {
            assertWritten(field);
        }
        assertThat(ViseField.all()).hasSize(14).doesNotHaveDuplicates();
    }

    private static <T> void assertWritten(ViseField<T> field) {
        Job inked = Edits.ink(pencilled(), "s2", field);
        ViseHolding holding = (ViseHolding) inked.plan().setUps().get(1).holding();
        assertThat(field.ink().apply(holding))
                .as(field.key())
                .isEqualTo(Plannable.inked(field.drawn().apply(drawnVise()).value()));
        assertThat(field.write(holding, Plannable.pencilled())).isEqualTo(ViseHolding.pencilled());
        assertThat(ViseField.of(field.key())).contains(field);
    }

    @Test
    void an_unknown_operation_is_named() {
        assertThatThrownBy(() -> Edits.pencil(pencilled(), "bore", OperationField.SPEED))
                .hasMessage("The drawn-up job has no operation bore.");
    }

    static DrawnUp pencilled() {
        Block block = new Block(size("82"), size("52"), size("40"), Map.of());
        JobPlan plan = new JobPlan(
                new Title("Bearing block", "T-014", "A"),
                UnitSystem.METRIC,
                12,
                "mild-steel",
                block,
                new MachineAsItStands("knee-mill", List.of(), null),
                List.of(),
                List.of(),
                List.of());
        return new DrawnUp(new Job(plan, JobRecord.EMPTY), List.of(drawnSetUp("s1", ""), drawnSetUp("s2", "2")));
    }

    private static DrawnSetUp drawnSetUp(String id, String mark) {
        return new DrawnSetUp(
                id,
                "Top side up",
                Standing.PENCILLED,
                new Drawn<>(Side.TOP, Standing.PENCILLED),
                0,
                drawnVise(),
                ZeroFinding.EDGES,
                List.of(
                        drawn("spot" + mark, Operation.Kind.SPOT),
                        drawn("drill" + mark, Operation.Kind.DRILL),
                        drawn("tap" + mark, Operation.Kind.TAP)));
    }

    private static DrawnVise drawnVise() {
        return new DrawnVise(
                pencil("vise"),
                pencil(ViseHolding.JawSeat.INBOARD),
                pencil("parallels"),
                pencil(mm("20")),
                pencil(mm("0")),
                pencil(ViseHolding.GripAsked.FIRM),
                pencil(mm("1")));
    }

    private static DrawnOperation drawn(String id, Operation.Kind kind) {
        return new DrawnOperation(
                id,
                Standing.PENCILLED,
                kind,
                List.of("hole"),
                pencil("cutter"),
                pencil("holder"),
                pencil(mm("50")),
                pencil(mm("40")),
                pencil(mm("7")),
                pencil(mm("0")),
                pencil(Operation.LastPass.NONE),
                pencil(new Typed<>("60 min", new Time(3600))),
                pencil(Operation.Direction.CONVENTIONAL),
                pencil(Operation.Coolant.DRY),
                pencil(Operation.Method.QUILL_LEVER),
                pencil(pencilledSpeed()),
                pencil(new Typed<>("120 mm/min", new Speed(2))),
                pencil(mm("400")),
                "");
    }

    private static Typed<SpindleSpeed> pencilledSpeed() {
        return new Typed<>("1115 rev/min", new SpindleSpeed(116.76));
    }

    private static <T> Drawn<T> pencil(T value) {
        return new Drawn<>(value, Standing.PENCILLED);
    }

    private static Typed<Length> mm(String number) {
        return new Typed<>(number + " mm", new Length(Double.parseDouble(number)));
    }

    private static Size size(String number) {
        return Size.of(mm(number));
    }
}
