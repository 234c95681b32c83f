package setwright.job.note;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Keyseat;
import setwright.job.Pattern;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.TSlot;
import setwright.job.note.NoteRead.Missing;
import setwright.job.note.NoteRead.Offer;
import setwright.job.note.NoteRead.One;
import setwright.job.note.NoteRead.Refused;
import setwright.job.note.NoteRead.Several;
import setwright.quantity.CsvRows;
import setwright.quantity.Reading;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

class NotesTest {
    private static final String ANY_PLACE = ", centred";

    static List<CsvRows.Row> rows() {
        return CsvRows.beside(NotesTest.class, "/job/note/notes.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_note_is_read_asked_offered_or_refused_as_the_table_says(CsvRows.Row row) {
        UnitSystem units = row.text("units").equals("inch") ? UnitSystem.INCH : UnitSystem.METRIC;
        NoteRead<BlankNote> blank = Blanks.read(row.text("blank"), units);
        NoteContext context = new NoteContext(units, one(blank).blank(), List.of());
        NoteRead<List<Feature>> read = Notes.read(row.text("note"), context);
        assertThat(read.kind().name().toLowerCase(Locale.ROOT) + ": " + text(read))
                .isEqualTo(row.text("outcome") + ": " + row.text("text"));
    }

    @Test
    void the_table_is_long_enough_to_show_the_grammar() {
        Map<String, Long> outcomes =
                rows().stream().collect(Collectors.groupingBy(row -> row.text("outcome"), Collectors.counting()));
        assertThat(rows()).hasSizeGreaterThanOrEqualTo(60);
        assertThat(outcomes.get("refused") + outcomes.get("several")).isGreaterThanOrEqualTo(15);
    }

    @Test
    void four_tapped_holes_keep_thread_places_and_note() {
        Hole hole = (Hole) metric("4x M6 thru, 76x36");
        assertThat(hole.id()).isEqualTo("hole1");
        assertThat(hole.note()).isEqualTo("4x M6 thru, 76x36");
        assertThat(hole.make()).isEqualTo(Hole.Make.TAPPED);
        assertThat(hole.thread()).isEqualTo("M6");
        assertThat(hole.size().nominal().inside()).isEqualTo(6);
        assertThat(hole.through()).isTrue();
        assertThat(hole.side()).isEqualTo(Side.TOP);
        Pattern.Grid grid = (Pattern.Grid) hole.place();
        assertThat(grid.holes()).isEqualTo(4);
        assertThat(grid.spacingU().text()).isEqualTo("76 mm");
        assertThat(grid.spacingV().inside()).isEqualTo(36);
    }

    @Test
    void an_answer_completes_a_note_and_leaves_it_as_typed() {
        One<List<Feature>> read = read("4x M6 thru", List.of("76x36"));
        assertThat(read.value().get(0).note()).isEqualTo("4x M6 thru");
        assertThat(((Hole) read.value().get(0)).place().holes()).isEqualTo(4);
    }

    @Test
    void a_number_drill_keeps_its_name() {
        Hole hole = (Hole) inch("#7 thru" + ANY_PLACE);
        assertThat(hole.size().nominal().text()).isEqualTo("#7");
        assertThat(hole.size().nominal().inside()).isEqualTo(0.201 * 25.4);
    }

    @Test
    void a_tolerance_class_becomes_limits() {
        Hole hole = (Hole) metric("10 H7 thru" + ANY_PLACE);
        assertThat(hole.make()).isEqualTo(Hole.Make.REAMED);
        assertThat(hole.fit()).isEqualTo("H7");
        // ISO 286-2, from memory: H7 over 6 up to 10 mm is 0 to +15 µm
        assertThat(hole.size().leastMm()).isEqualTo(10);
        assertThat(hole.size().greatestMm()).isEqualTo(10.015);
    }

    @Test
    void a_counterbore_belongs_to_its_hole() {
        Hole hole = (Hole) metric("cbore 11 x 6.5 on 6.6 thru" + ANY_PLACE);
        assertThat(hole.size().nominal().inside()).isEqualTo(6.6);
        assertThat(hole.mouth()).isNotNull();
        assertThat(hole.mouth().form()).isEqualTo(Hole.Mouth.Form.COUNTERBORE);
        assertThat(hole.mouth().diameter().nominal().inside()).isEqualTo(11);
        assertThat(hole.mouth().depth().nominal().inside()).isEqualTo(6.5);
    }

    @Test
    void a_countersink_has_an_angle_and_no_depth() {
        Hole hole = (Hole) metric("csk 12 x 90 on 6 thru" + ANY_PLACE);
        assertThat(hole.mouth().depth()).isNull();
        assertThat(Unit.DEG.fromInside(hole.mouth().angle().inside())).isEqualTo(90);
    }

    @Test
    void holes_on_a_bolt_circle_are_about_the_middle() {
        NoteContext wide = context(UnitSystem.METRIC, "120x120x20");
        Hole hole = (Hole) only(Notes.read("6x 9 thru on 80 BC", wide));
        Pattern.BoltCircle circle = (Pattern.BoltCircle) hole.place();
        assertThat(circle.count()).isEqualTo(6);
        assertThat(circle.diameter().inside()).isEqualTo(80);
        assertThat(circle.from()).isEqualTo(Pattern.Datum.CENTRE);
    }

    @Test
    void an_inch_thread_keeps_its_fraction() {
        Hole hole = (Hole) inch("1/4-20 x 1/2 deep" + ANY_PLACE);
        assertThat(hole.thread()).isEqualTo("1/4-20");
        assertThat(hole.size().nominal().text()).isEqualTo("1/4 in");
        assertThat(hole.depth().nominal().text()).isEqualTo("1/2 in");
    }

    @Test
    void thousandths_over_and_under_become_limits_in_inches() {
        Slot slot = (Slot) inch("slot 2 +.001 -.000 x .5 open centred");
        assertThat(slot.width().nominal().text()).isEqualTo("2 in");
        assertThat(slot.width().least().text()).isEqualTo("2 in");
        assertThat(slot.width().greatest().text()).isEqualTo("2.001 in");
    }

    @Test
    void a_slot_has_width_depth_and_open_ends() {
        Slot slot = (Slot) metric("slot 12 x 8 deep, open, centred");
        assertThat(slot.width().nominal().inside()).isEqualTo(12);
        assertThat(slot.depth().nominal().inside()).isEqualTo(8);
        assertThat(slot.open()).isTrue();
        assertThat(slot.place().from()).isEqualTo(Pattern.Datum.CENTRE);
    }

    @Test
    void a_fine_pitch_is_offered_beside_a_depth_and_either_can_be_picked() {
        Several<List<Feature>> several = (Several<List<Feature>>) Notes.read("M8 x 1", block());
        List<String> notes = several.offers().stream().map(Offer::note).toList();
        Hole fine = (Hole)
                read("M8 x 1", List.of(notes.get(0), "thru, centred")).value().get(0);
        Hole shallow =
                (Hole) read("M8 x 1", List.of(notes.get(1), "centred")).value().get(0);
        assertThat(fine.thread()).isEqualTo("M8x1");
        assertThat(fine.through()).isTrue();
        assertThat(shallow.thread()).isEqualTo("M8");
        assertThat(shallow.depth().nominal().inside()).isEqualTo(1);
    }

    @Test
    void facing_to_a_size_leaves_it_from_the_opposite_side() {
        Face face = (Face) metric("top to 20 +0/-0.1");
        assertThat(face.side()).isEqualTo(Side.TOP);
        assertThat(face.across().leastMm()).isEqualTo(19.9);
        assertThat(face.across().greatestMm()).isEqualTo(20);
    }

    @Test
    void square_all_over_faces_six_sides_to_the_blank() {
        List<Feature> faces = read("square all over", List.of()).value();
        assertThat(faces).extracting(Feature::id).containsExactly("face1", "face2", "face3", "face4", "face5", "face6");
        assertThat(faces).extracting(Feature::side).containsExactlyInAnyOrder(Side.values());
        assertThat(faces)
                .allSatisfy(face -> assertThat(((Face) face).across().nominal().inside())
                        .isEqualTo(face.side().size(block().size()).z()));
    }

    @Test
    void a_t_slot_is_likely_of_the_published_sizes() {
        NoteContext high = context(UnitSystem.METRIC, "100x60x40");
        TSlot slot = (TSlot) only(Notes.likely("T-slot 12", List.of(), high));
        // BS 2485 (same series as ISO 299): throat 12, total depth 20 to 25, head 19 to 21 wide, 8 to 9 high
        assertThat(slot.depth().nominal().inside()).isBetween(20.0, 25.0);
        assertThat(slot.headWidth().nominal().inside()).isBetween(19.0, 21.0);
        assertThat(slot.headHeight().nominal().inside()).isBetween(8.0, 9.0);
    }

    @Test
    void a_keyseat_of_a_round_bar_runs_along_it() {
        NoteContext shaft = context(UnitSystem.METRIC, "round 40 x 200");
        Keyseat seat = (Keyseat) only(Notes.likely("keyseat 8 x 4 x 40 long", List.of(), shaft));
        assertThat(seat.shaft().nominal().inside()).isEqualTo(40);
        assertThat(seat.side()).isEqualTo(Side.FRONT);
        assertThat(Unit.DEG.fromInside(seat.place().angle().inside())).isEqualTo(90);
    }

    @Test
    void a_chamfer_may_be_on_a_feature_that_is_there() {
        Feature hole = metric("10 thru centred");
        NoteContext withHole = block().with(List.of(hole));
        One<List<Feature>> read = (One<List<Feature>>) Notes.read("chamfer 1 x 45 on hole1", withHole);
        assertThat(read.sentence()).isEqualTo("Chamfer 1 x 45° at hole1, from the top");
    }

    @Test
    void a_new_feature_takes_the_next_free_id() {
        NoteContext withHole = block().with(List.of(metric("10 thru centred")));
        assertThat(only(Notes.read("6 thru at 12,12", withHole)).id()).isEqualTo("hole2");
    }

    @Test
    void a_refusal_says_where_the_piece_stands() {
        Refused<List<Feature>> refused = (Refused<List<Feature>>) Notes.read("10 thru foo", block());
        assertThat("10 thru foo".substring(refused.from(), refused.to())).isEqualTo("foo");
    }

    @Test
    void the_likely_answers_make_a_feature_of_every_example_or_say_what_is_wrong_with_the_blank() {
        NoteContext large = context(UnitSystem.METRIC, "200x150x60");
        for (String example : Notes.examples()) {
            boolean placeOnly = example.equals("76x36");
            boolean round = example.startsWith("keyseat");
            NoteContext context = round ? context(UnitSystem.METRIC, "round 40 x 200") : large;
            assertThat(Notes.likely(example, List.of(), context).kind())
                    .as(example)
                    .isEqualTo(placeOnly ? NoteRead.Kind.REFUSED : NoteRead.Kind.ONE);
        }
    }

    private static String text(NoteRead<?> read) {
        return switch (read.kind()) {
            case ONE -> ((One<?>) read).sentence();
            case MISSING ->
                ((Missing<?>) read).question().asks() + " ["
                        + ((Missing<?>) read).question().likely() + "]";
            case SEVERAL ->
                ((Several<?>) read).offers().stream().map(Offer::note).collect(Collectors.joining(" / "));
            case REFUSED -> ((Refused<?>) read).message();
        };
    }

    private static Feature metric(String note) {
        return only(Notes.read(note, block()));
    }

    private static Feature inch(String note) {
        return only(Notes.read(note, context(UnitSystem.INCH, "4x3x1")));
    }

    private static One<List<Feature>> read(String note, List<String> answers) {
        NoteRead<List<Feature>> read = Notes.read(note, answers, block());
        assertThat(read.kind()).as(text(read)).isEqualTo(NoteRead.Kind.ONE);
        return (One<List<Feature>>) read;
    }

    private static Feature only(NoteRead<List<Feature>> read) {
        assertThat(read.kind()).as(text(read)).isEqualTo(NoteRead.Kind.ONE);
        List<Feature> features = ((One<List<Feature>>) read).value();
        assertThat(features).hasSize(1);
        return features.get(0);
    }

    private static NoteContext block() {
        Reading metric = new Reading(UnitSystem.METRIC);
        Block block = new Block(
                Size.of(metric.length("100")), Size.of(metric.length("60")), Size.of(metric.length("25")), Map.of());
        return new NoteContext(UnitSystem.METRIC, block, List.of());
    }

    private static NoteContext context(UnitSystem units, String blank) {
        return new NoteContext(units, one(Blanks.read(blank, units)).blank(), List.of());
    }

    private static BlankNote one(NoteRead<BlankNote> read) {
        assertThat(read.kind()).as(text(read)).isEqualTo(NoteRead.Kind.ONE);
        return ((One<BlankNote>) read).value();
    }
}
