package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.shop.Machine;

class RoomAndQuillTest {
    private static final String CHANGE = "no-room-to-change-tool";
    private static final String QUILL = "quill-runs-out";

    /** The 11.8 drill stands 117 out of a chuck of 100: 217; an R8 shank takes 102 more, with the table run aside. */
    @Test
    void a_head_that_ends_a_millimetre_too_low_lets_the_longest_drill_not_out() {
        Caution caution = Cases.lowHead(318).found(CHANGE).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.operation()).isEqualTo("h1-drill");
        assertThat(caution.figure()).isEqualTo(Figure.atLeast(102, 318 - 217, setwright.quantity.Unit.MM));
    }

    /**
     * Spot and drill of one hole, the shank of the chuck too long to come out over it with the knee down: the dial comes
     * back to half a division of 0.0254 and a rest of backlash of 0.0076, 0.0203 together.
     */
    @Test
    void a_way_back_that_takes_more_than_a_third_of_the_position_is_a_note_with_both_figures() {
        Caution note = lowHeadOverOneHole("0.05").note(CHANGE).orElseThrow();

        assertThat(note.operation()).isEqualTo("h1-drill");
        assertThat(note.message()).contains("with the table run aside", "102 mm", "0.020 mm", "0.017 mm", "same side");
        assertThat(lowHeadOverOneHole("0.07").note(CHANGE)).isEmpty();
    }

    private static Bench lowHeadOverOneHole(String position) {
        return Bench.of(SmallJobs.job(
                        "Pivot block",
                        1,
                        SmallMaterials.STEEL,
                        SmallJobs.block("82", "52", "40"),
                        SmallJobs.face("f1", "38"),
                        SmallJobs.reamed("h1", "12 H7 thru", "12", position)))
                .in(SmallShop.shop().with(List.of(SmallShop.machine("365 mm"))))
                .mm("h1-drill", OperationField.KNEE_HEIGHT, 352)
                .mm("h1-ream", OperationField.KNEE_HEIGHT, 352)
                .mm("h1-ream", OperationField.STICK_OUT, 140);
    }

    /** Its chuck does not come out over the work, but the knee goes down between spot and drill in any case. */
    @Test
    void where_the_way_loses_nothing_it_is_silent() {
        assertThat(Cases.block().findings().cautions())
                .extracting(Caution::slug)
                .doesNotContain(CHANGE);
    }

    /** The reamer ends its bevel of 1.5 and 2 mm below 85.7: 82.2; it stands 101 out of a collet without nose. */
    @Test
    void the_quill_lacks_what_the_nose_stands_too_high() {
        Caution caution = Cases.reamFrom(315).found(QUILL).get(0);

        assertThat(caution.severity()).isEqualTo(Severity.STOP);
        assertThat(caution.figure().value()).isCloseTo(315 - 101 - 82.2, within(1e-9));
        assertThat(caution.message()).contains("131.8 mm", "127 mm", "4.8 mm short");
        assertThat(315 - 101 - 82.2 - 127).isCloseTo(4.8, within(1e-9));
    }

    @Test
    void the_rounding_of_a_typed_height_is_not_held_against_the_quill() {
        assertThat(Cases.reamFrom(310.24).found(QUILL)).isEmpty();
        assertThat(Cases.reamFrom(310.26).found(QUILL)).hasSize(1);
    }

    @Test
    void milling_takes_no_quill() {
        assertThat(Cases.block().mm("f1-face", OperationField.KNEE_HEIGHT, 400).found(QUILL))
                .isEmpty();
    }

    /** A plate of the thickness with a 12 H7 through it, spot drill and drill in the chuck: the drill is 217 long there. */
    private static Bench reamedPlate(String thick) {
        return Bench.of(SmallJobs.job(
                        "Plate",
                        1,
                        SmallMaterials.STEEL,
                        SmallJobs.block("82", "52", thick),
                        SmallJobs.reamed("h1", "12 H7 thru", "12", "0.2")))
                .ink("s1-spot", OperationField.HOLDER, "drill-chuck-keyless-13-r8");
    }

    /**
     * The drill crosses 10 over the plate: 227 over its top. The reamer ends its bevel of 1.5 and 2 mm below the plate and
     * has 127 of quill: 101 + 127 - 3.5 less the plate over its top, the thickness and 2.5 too low. A quarter of 101 is
     * the most that it is set out further, 25 as one sets it.
     */
    @Test
    void a_reamer_is_set_out_further_where_that_saves_a_knee_height() {
        Bench thin = reamedPlate("20");
        Bench thick = reamedPlate("40");

        assertThat(stickOut(thin)).isEqualTo(101 + Math.ceil(21 + 2.5));
        assertThat(knee(thin, "h1-ream")).isEqualTo(knee(thin, "h1-drill"));
        assertThat(stickOut(thick)).isEqualTo(101);
        assertThat(knee(thick, "h1-ream")).isLessThan(knee(thick, "h1-drill"));
    }

    private static double stickOut(Bench bench) {
        return bench.plan().drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operation("h1-ream").stream())
                .mapToDouble(one -> one.stickOut().value().inside())
                .findFirst()
                .orElseThrow();
    }

    private static double knee(Bench bench, String operation) {
        return bench.plan().room().operation(operation).orElseThrow().kneeHeight();
    }

    /** The drill of the four threads at 364: 364 - 184 - 82.66 = 97.3 of quill; of a quill of 90 it lacks 7.3. */
    @Test
    void a_drill_that_runs_out_of_quill_goes_on_after_the_knee_has_come_up() {
        Bench short90 = Cases.block()
                .in(SmallShop.shop().with(List.of(SmallShop.withQuill("90 mm"))))
                .mm("h2-drill", OperationField.KNEE_HEIGHT, 364);
        Caution caution = short90.found(QUILL).get(0);
        double lacking = caution.figure().value() - 90;

        assertThat(short90.remedies(caution)).extracting(Remedy::text).anyMatch(text -> text.contains("knee up, lock"));
        Bench bites = short90.ink("h2-drill", OperationField.METHOD, Operation.Method.QUILL_IN_BITES);
        assertThat(bites.found(QUILL)).isEmpty();
        var room = bites.plan().room().operation("h2-drill").orElseThrow();
        assertThat(room.kneeUp()).isCloseTo(lacking, within(1e-9));
        assertThat(room.quillUsed().inside()).isCloseTo(90, within(1e-9));
        assertThat(short90.ink("h1-ream", OperationField.METHOD, Operation.Method.QUILL_IN_BITES)
                        .plan()
                        .room()
                        .operation("h1-ream")
                        .orElseThrow()
                        .kneeUp())
                .isZero();
    }

    /** From 10 over the blank of 41 to a point and 1 mm below it is more than 50; a reamer's stroke is not cut in two. */
    @Test
    void a_drill_longer_in_the_hole_than_the_stroke_is_pencilled_in_bites_and_a_reamer_is_a_stop() {
        Bench bench = Cases.block().in(SmallShop.shop().with(List.of(SmallShop.withQuill("45 mm"))));

        assertThat(bench.plan().room().operation("h1-drill").orElseThrow().kneeUp())
                .isPositive();
        assertThat(bench.found(QUILL)).extracting(Caution::operation).doesNotContain("h1-drill", "h2-drill");
        assertThat(bench.found(QUILL)).extracting(Caution::operation).contains("h1-ream");
    }

    @Test
    void on_a_round_column_spot_and_drill_share_the_chuck_and_its_height() {
        Bench knee = Cases.block();
        Bench column = knee.in(SmallShop.shop().with(List.of(SmallShop.onColumn(Machine.Column.ROUND))));

        assertThat(knee(knee, "s1-spot")).isLessThan(knee(knee, "h1-drill"));
        assertThat(knee(column, "s1-spot")).isEqualTo(knee(column, "h1-drill"));
    }
}
