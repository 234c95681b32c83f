package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.JobRecord;
import setwright.window.model.EntryPage;
import setwright.window.model.Screen;
import setwright.window.state.Entry;

class EntryDeskTest {
    @TempDir
    Path folder;

    private TestDesk test;
    private EntryActions entry;

    @BeforeEach
    void open() {
        test = new TestDesk(folder);
        test.settled();
        entry = test.desk().entry();
    }

    @AfterEach
    void close() {
        test.close();
    }

    @Test
    void a_new_job_is_untitled_and_bare_on_the_machine_and_of_the_material_of_the_last() {
        Job last = job();
        entry.begin();

        assertThat(page().page()).isEqualTo(Entry.Page.NEW_JOB);
        assertThat(test.desk().screen().title()).contains("new job").doesNotContain("*");
        assertThat(features()).isEmpty();
        assertThat(job().plan().machine()).isEqualTo(last.plan().machine());
        assertThat(job().plan().material()).isEqualTo(last.plan().material());
        assertThat(job().record()).isEqualTo(JobRecord.EMPTY);
        assertThat(test.settled().route())
                .as("the block stands there before the first note")
                .hasSize(1);
    }

    @Test
    void the_title_block_is_read_back_as_a_sentence_as_it_is_typed() {
        entry.begin();
        title("BLANK", "100x60x25 6061");
        title("OFF", "4");

        assertThat(page().readBack()).isEqualTo("Block 100 mm x 60 mm x 25 mm, Aluminium 6061-T6, 4 off");
        assertThat(page().complaint()).isEmpty();
    }

    @Test
    void a_title_that_cannot_be_read_keeps_its_text_says_why_and_leaves_the_job() {
        entry.begin();
        Job before = job();
        title("BLANK", "100x60");
        assertThat(page().title().get(0).text()).isEqualTo("100x60");
        assertThat(page().complaint()).contains("2 are written");
        assertThat(job()).isEqualTo(before);

        title("BLANK", "100x60x25");
        title("MATERIAL", "cheese");
        assertThat(page().complaint()).contains("cheese");
    }

    @Test
    void a_note_is_drawn_while_it_is_typed_and_stands_once_it_is_taken() {
        block();
        entry.note("8 H7 thru centred");
        assertThat(page().sentence()).isNotEmpty();
        assertThat(features()).hasSize(1);
        assertThat(test.settled().card().lines()).hasSizeGreaterThan(3);

        entry.take();
        assertThat(page().note()).isEmpty();
        assertThat(page().notes())
                .singleElement()
                .satisfies(noted -> assertThat(noted.note()).isEqualTo("8 H7 thru centred"));
        assertThat(test.desk().screen().undo()).isEqualTo("Note 8 H7 thru centred");
    }

    @Test
    void what_is_missing_is_asked_as_one_blank_that_holds_what_is_likely() {
        block();
        entry.note("4x M6 thru");
        assertThat(page().asks()).isNotEmpty();
        assertThat(page().answer()).isNotEmpty();
        assertThat(page().notes()).isEmpty();

        entry.take();
        assertThat(page().notes()).hasSize(1);

        entry.note("4x M5 thru");
        entry.answer("50 x 30");
        entry.take();
        assertThat(page().notes()).hasSize(2);
        assertThat(page().notes().get(1).sentence()).contains("50 x 30");
    }

    @Test
    void an_answer_that_cannot_be_read_stays_in_its_blank_with_what_is_wrong() {
        block();
        entry.note("4x M6 thru");
        entry.answer("on the moon");
        entry.take();

        assertThat(page().answer()).isEqualTo("on the moon");
        assertThat(page().refused()).isNotEmpty();
        assertThat(page().notes()).isEmpty();
        assertThat(page().note()).isEqualTo("4x M6 thru");
    }

    @Test
    void a_refused_note_keeps_its_text_and_takes_nothing() {
        block();
        entry.note("frobnicate 12");
        entry.take();

        assertThat(page().note()).isEqualTo("frobnicate 12");
        assertThat(page().refused()).contains("frobnicate");
        assertThat(features()).isEmpty();
    }

    @Test
    void two_readings_are_both_offered_and_one_is_picked_by_its_number() {
        block();
        entry.note("1/4 thru centred");
        List<?> offers = page().offers();
        assertThat(offers).as("%s", page()).hasSizeGreaterThan(1);
        entry.take();
        assertThat(page().notes()).isEmpty();

        entry.pick(1);
        assertThat(page().offers()).isEmpty();
        assertThat(page().notes())
                .singleElement()
                .satisfies(noted -> assertThat(noted.sentence()).contains("1/4 in"));
    }

    @Test
    void squaring_up_faces_every_side_as_one_step() {
        block();
        entry.note("square up");
        entry.take();
        assertThat(features())
                .hasSize(6)
                .allSatisfy(face -> assertThat(face.kind()).isEqualTo(Feature.Kind.FACE));
        assertThat(page().notes()).hasSize(1);

        test.desk().undo();
        assertThat(features()).isEmpty();
        assertThat(page().notes()).isEmpty();
    }

    @Test
    void undo_takes_back_note_after_note_and_redo_brings_them_back() {
        block();
        for (String note : List.of("8 H7 thru centred", "5 thru at 10, 10")) {
            entry.note(note);
            entry.take();
        }
        assertThat(page().notes()).as("%s", page()).hasSize(2);
        test.desk().undo();
        assertThat(page().notes()).hasSize(1);
        test.desk().undo();
        assertThat(page().notes()).isEmpty();
        test.desk().redo();
        test.desk().redo();
        assertThat(page().notes()).hasSize(2);
        assertThat(features()).extracting(Feature::id).doesNotHaveDuplicates();
    }

    @Test
    void an_empty_line_closes_the_page_and_escape_rubs_out_first() {
        block();
        entry.note("8 H7 thru centred");
        entry.back();
        assertThat(page().note()).isEmpty();
        assertThat(features()).isEmpty();
        assertThat(page().open()).isTrue();

        entry.take();
        assertThat(page().open()).isFalse();
        assertThat(test.desk().screen().undo()).doesNotContain("Note");
    }

    @Test
    void a_blank_that_no_vise_takes_is_shown_strapped_to_the_table() {
        entry.begin();
        title("BLANK", "600x300x25 6061");
        entry.note("6 thru centred");

        assertThat(test.settled().route())
                .first()
                .satisfies(card -> assertThat(card.holding()).startsWith("on the table"));
        assertThat(test.desk().screen().card().lines()).hasSizeGreaterThan(2);
    }

    @Test
    void closing_drops_a_note_that_was_not_taken() {
        block();
        entry.note("8 H7 thru centred");
        entry.close();

        assertThat(features()).isEmpty();
    }

    @Test
    void notes_are_added_to_an_open_job_behind_those_that_it_has() {
        List<Feature> before = features();
        entry.open();
        assertThat(page().title()).isEmpty();
        assertThat(page().notes()).hasSameSizeAs(before);
        entry.note("4 thru at 20, 10");
        entry.take();
        entry.take();

        assertThat(features()).hasSize(before.size() + 1).startsWith(before.toArray(new Feature[0]));
        assertThat(test.settled().card().lines()).isNotEmpty();
    }

    @Test
    void the_same_again_has_all_that_was_planned_and_nothing_that_happened() {
        Job old = job();
        test.desk().sameAgain();
        Screen screen = test.settled();

        assertThat(job().plan()).isEqualTo(old.plan());
        assertThat(job().record()).isEqualTo(JobRecord.EMPTY);
        assertThat(screen.title()).contains("same again");
        assertThat(screen.at().line()).isEqualTo("part");
    }

    private void block() {
        entry.begin();
        title("BLANK", "100x60x25 6061");
    }

    private void title(String field, String text) {
        entry.typed("title." + field, text);
    }

    private EntryPage page() {
        return test.desk().screen().entry();
    }

    private List<Feature> features() {
        return job().plan().features();
    }

    private Job job() {
        return test.desk().session().job();
    }
}
