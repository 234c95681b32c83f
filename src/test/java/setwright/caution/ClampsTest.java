package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import setwright.caution.check.CutterMeets;
import setwright.caution.check.HolderMeets;
import setwright.geometry.Body;
import setwright.geometry.Clearance;
import setwright.geometry.Nearest;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.plan.room.OperationRoom;
import setwright.plan.room.RoomPlan;
import setwright.plan.room.SetUpRoom;

/** The bearing block with a clamp or a stop standing beside it. */
class ClampsTest {
    private static final Plan BLOCK = Cases.block().plan();

    /** The face is cut at 85.7 + 38 by a face mill that runs off to the left by its half and 2 more. */
    private static final double CUT_AT = 85.7 + 38;

    /** A box to the left of the part, under the path of the face mill. */
    private static Plan with(Role role, double top) {
        Body body = new Body(role.word(), role, Prism.box(new Point2(-70, -10), new Point2(-50, 10), top - 20, top));
        RoomPlan room = BLOCK.room();
        List<SetUpRoom> setUps =
                room.setUps().stream().map(one -> with(one, body)).toList();
        return new Plan(
                BLOCK.drawnUp(),
                BLOCK.rows(),
                BLOCK.part(),
                BLOCK.cut(),
                BLOCK.hold(),
                new RoomPlan(setUps, room.notChecked(), room.kept()),
                BLOCK.place(),
                BLOCK.index(),
                BLOCK.time(),
                BLOCK.choose());
    }

    private static SetUpRoom with(SetUpRoom room, Body body) {
        return new SetUpRoom(
                room.setUp(),
                room.levels(),
                room.kneeHeights(),
                room.touchOffs(),
                room.movedZeros(),
                room.operations().stream().map(one -> with(one, body)).toList());
    }

    private static OperationRoom with(OperationRoom room, Body body) {
        OperationStage on = BLOCK.part().operation(room.operation()).orElseThrow();
        List<Nearest> near = Clearance.all(on.tool(), on.path(), List.of(body));
        return new OperationRoom(
                room.operation(),
                room.nearest(),
                near,
                room.kneeHeight(),
                room.kneeLow(),
                room.kneeHigh(),
                room.noseLowest(),
                room.quillUsed(),
                room.quillStroke(),
                room.kneeUp(),
                room.packing(),
                room.change());
    }

    private static List<Caution> found(Check check, Plan plan) {
        return check.look(plan).stream()
                .filter(Finding.Fails.class::isInstance)
                .map(fails -> ((Finding.Fails) fails).caution())
                .toList();
    }

    private static Predicate<Caution> clear(double mm) {
        return caution -> Math.abs(caution.figure().value() - mm) < 1e-6;
    }

    @Test
    void a_strap_stands_three_millimetres_under_the_cut_or_it_is_said() {
        assertThat(found(CutterMeets.clamp(), with(Role.STRAP, CUT_AT - 3.1))).isEmpty();
        assertThat(found(CutterMeets.clamp(), with(Role.STRAP, CUT_AT - 2)))
                .singleElement()
                .matches(clear(2))
                .extracting(Caution::severity)
                .isEqualTo(Severity.CAUTION);
    }

    @Test
    void a_nut_in_the_path_is_not_run() {
        assertThat(found(CutterMeets.clamp(), with(Role.STUD_NUT, CUT_AT + 5)))
                .singleElement()
                .satisfies(caution -> {
                    assertThat(caution.severity()).isEqualTo(Severity.STOP);
                    assertThat(caution.figure().value()).isCloseTo(-5, within(1e-6));
                    assertThat(caution.message()).contains("cuts 5 mm into the stud nut (s1/f1-face)");
                });
    }

    @Test
    void a_stop_half_a_millimetre_under_the_cut_is_right() {
        assertThat(found(CutterMeets.stop(), with(Role.STOP, CUT_AT - 0.6))).isEmpty();
        assertThat(found(CutterMeets.stop(), with(Role.STOP, CUT_AT - 0.4))).hasSize(1);
        assertThat(found(CutterMeets.stop(), with(Role.STRAP, CUT_AT + 5))).isEmpty();
    }

    /** The arbor's nose is 40 over the edge of the face mill, and thinner than it. */
    @Test
    void a_nut_that_reaches_up_to_the_holder_is_said_of_the_holder_too() {
        assertThat(found(HolderMeets.clamp(), with(Role.STUD_NUT, CUT_AT + 45)))
                .filteredOn(caution -> caution.operation().equals("f1-face"))
                .singleElement()
                .extracting(Caution::severity)
                .isEqualTo(Severity.STOP);
        assertThat(found(HolderMeets.clamp(), with(Role.STUD_NUT, CUT_AT - 5))).isEmpty();
    }
}
