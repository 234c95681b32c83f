package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.job.OperationField;

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

    @Test
    void where_another_place_does_it_is_a_note_that_names_the_place() {
        Caution note = Cases.block().note(CHANGE).orElseThrow();

        assertThat(note.message()).contains("with the table run aside", "123.7 mm", "102 mm");
    }

    @Test
    void where_it_comes_out_over_the_work_nothing_is_said() {
        assertThat(Cases.block().findings().cautions())
                .filteredOn(caution -> caution.slug().equals(CHANGE))
                .extracting(Caution::operation)
                .doesNotContain("h1-ream");
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
}
