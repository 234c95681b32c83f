package setwright.job.note;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.note.NoteRead.Kind;
import setwright.job.note.NoteRead.One;
import setwright.quantity.UnitSystem;

class NoteSheetTest {
    @Test
    void a_line_that_only_places_completes_the_note_above() {
        NoteSheet sheet = sheet("4x M6 thru\n76x36\n\nslot 12x8 open\n");
        assertThat(sheet.lines()).extracting(NoteSheet.Line::note).containsExactly("4x M6 thru", "slot 12x8 open");
        assertThat(sheet.lines()).extracting(NoteSheet.Line::number).containsExactly(1, 4);
        assertThat(sheet.lines().get(0).read().kind()).isEqualTo(Kind.ONE);
        Hole hole = (Hole)
                ((One<List<Feature>>) sheet.lines().get(0).read()).value().get(0);
        assertThat(hole.note()).isEqualTo("4x M6 thru");
        assertThat(sheet.lines().get(1).read().kind()).isEqualTo(Kind.MISSING);
    }

    @Test
    void several_lines_may_complete_one_note() {
        NoteSheet sheet = sheet("M8 x 20 deep\non front\nat 20, 12");
        assertThat(sheet.lines()).hasSize(1);
        assertThat(((One<?>) sheet.lines().get(0).read()).sentence())
                .isEqualTo(
                        "Tapped hole M8, 20 deep of full thread, from the front, at 20 from the left, 12 from the bottom");
    }

    @Test
    void a_place_below_a_note_that_lacks_none_is_refused() {
        NoteSheet sheet = sheet("M6 thru centred\n76x36");
        assertThat(sheet.lines().get(1).read().kind()).isEqualTo(Kind.REFUSED);
    }

    @Test
    void features_of_a_sheet_have_ids_of_their_own() {
        NoteSheet sheet = sheet("4x M6 thru\n76x36\n#7 thru\nslot 12x8\nfoo\nsquare up");
        assertThat(sheet.features())
                .extracting(Feature::id)
                .containsExactly("hole1", "hole2", "slot1", "face1", "face2", "face3", "face4", "face5", "face6");
    }

    private static NoteSheet sheet(String text) {
        BlankNote blank = ((One<BlankNote>) Blanks.read("100x60x25", UnitSystem.METRIC)).value();
        return NoteSheet.read(text, new NoteContext(UnitSystem.METRIC, blank.blank(), List.of()));
    }
}
