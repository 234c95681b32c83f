package setwright.job.note;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.job.Block;
import setwright.job.note.NoteRead.One;
import setwright.job.note.NoteRead.Refused;
import setwright.job.note.NoteRead.Several;
import setwright.quantity.UnitSystem;

class BlanksTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100x60x25 | METRIC | Block 100 x 60 x 25",
                "100 × 60 × 25 mm | METRIC | Block 100 x 60 x 25",
                "100x60x25 6061 | METRIC | Block 100 x 60 x 25, 6061",
                "100x60x25, mild steel | METRIC | Block 100 x 60 x 25, mild steel",
                "100x60x25 O1 | METRIC | Block 100 x 60 x 25, O1",
                "1 1/2 x 3 x 6 | INCH | Block 1 1/2 x 3 x 6",
                "1-1/2x3x6 12L14 | INCH | Block 1-1/2 x 3 x 6, 12L14",
                "4 x 3 x 1 in | METRIC | Block 4 in x 3 in x 1 in",
                "round 40 x 200 | METRIC | Round bar 40 x 200",
                "⌀40 x 200 C45 | METRIC | Round bar 40 x 200, C45",
                "round 40 +0/-0.1 x 200 | METRIC | Round bar 40 (39.9 to 40) x 200",
                "plate 300x100x3 | METRIC | Plate 300 x 100 x 3",
                "tube 40 x 30 x 100 | METRIC | Tube 40 x 30 x 100",
                "hex 24 x 60 | METRIC | Hexagon bar 24 x 60",
                "angle 50x50x5x200 | METRIC | Angle bar 50 x 50 x 5 x 200"
            })
    void a_blank_is_read_with_its_material_behind_it(String note, UnitSystem units, String sentence) {
        assertThat(Blanks.read(note, units))
                .isInstanceOfSatisfying(
                        One.class, one -> assertThat(one.sentence()).isEqualTo(sentence));
    }

    @Test
    void a_blank_keeps_what_was_typed() {
        One<BlankNote> read = (One<BlankNote>) Blanks.read("1 1/2 x 3 x 6", UnitSystem.INCH);
        Block block = (Block) read.value().blank();
        assertThat(block.length().nominal().text()).isEqualTo("1 1/2 in");
        assertThat(block.length().nominal().inside()).isEqualTo(38.1);
    }

    @Test
    void fractions_in_a_metric_job_are_offered_as_inches_and_as_millimetres() {
        Several<BlankNote> read = (Several<BlankNote>) Blanks.read("1 1/2 x 3 x 6 6061", UnitSystem.METRIC);
        assertThat(read.offers())
                .extracting(NoteRead.Offer::note)
                .containsExactly("1 1/2 x 3 x 6 in 6061", "1 1/2 x 3 x 6 mm 6061");
        One<BlankNote> inches =
                (One<BlankNote>) Blanks.read(read.offers().get(0).note(), UnitSystem.METRIC);
        assertThat(inches.value().blank().envelope().height().nominal().inside())
                .isEqualTo(152.4);
        assertThat(inches.value().material()).isEqualTo("6061");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100x60 | A block has 3 sizes, and 2 are written",
                "100x60x | wants a size behind it",
                "12,5x60x25 | the decimal sign is a point",
                "steel | stands where the sizes of the blank are wanted",
                "'' | Nothing stands where the sizes",
                "tube 30 x 40 x 100 | is no less than the outside",
                "0x60x25 | is nought",
                "99999x60x25 | longer than 10 m"
            })
    void a_blank_that_is_none_is_refused_with_what_is_accepted(String note, String part) {
        assertThat(Blanks.read(note, UnitSystem.METRIC))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.message()).contains(part));
    }
}
