package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.drawing.Drawing;
import setwright.job.Standing;
import setwright.window.model.Badge;
import setwright.window.model.Field;
import setwright.window.model.Figure;
import setwright.window.model.LimitRule;
import setwright.window.model.Line;
import setwright.window.model.Screen;
import setwright.window.state.Selection;

class DeskTest {
    @TempDir
    Path folder;

    private TestDesk test;
    private Desk desk;

    @BeforeEach
    void open() {
        test = new TestDesk(folder);
        desk = test.desk();
        test.settled();
    }

    @AfterEach
    void close() {
        test.close();
    }

    @Test
    void the_route_shows_each_set_up_with_its_worst_caution() {
        assertThat(desk.screen().route()).singleElement().satisfies(card -> {
            assertThat(card.title()).contains("Top side up");
            assertThat(card.badge().square()).isEqualTo(Badge.Square.FILLED);
            assertThat(card.badge().text()).isEqualTo("1 do not run");
            assertThat(card.chosen()).isTrue();
        });
    }

    @Test
    void a_folded_line_says_with_what_how_far_out_how_fast_and_how_long_in_at_most_four_figures() {
        Line drill = line("Drill 6.8");

        assertThat(drill.spoken())
                .contains("4 holes through")
                .contains("Keyless drill chuck")
                .containsPattern("\\d+ mm \\(pencilled\\) out")
                .contains("rev/min")
                .contains("mm/min")
                .contains(" min");
        assertThat(drill.pace().stream()
                        .filter(span -> span.text().matches(".*\\d.*"))
                        .count())
                .isLessThanOrEqualTo(3);
    }

    @Test
    void an_unfolded_drilling_shows_its_five_fields_and_its_worked_figures() {
        unfold("Drill 6.8");

        assertThat(fields()).extracting(Field::key).containsExactly("cutter", "holder", "stickOut", "speed", "feed");
        assertThat(fields()).extracting(Field::standing).containsOnly(Standing.PENCILLED);
        assertThat(desk.screen().card().unfolded().limits()).startsWith("Binds first: ");
        assertThat(desk.screen().card().unfolded().figures())
                .extracting(Figure::key)
                .contains("power", "torque", "thrust", "hold", "quill");
        assertThat(desk.screen().card().unfolded().figures()).hasSizeLessThanOrEqualTo(9);
    }

    @Test
    void where_the_limits_of_the_unfolded_line_bind_is_found_in_the_background() {
        unfold("Face the top");

        LimitRule depth = test.when(screen -> !screen.card().unfolded().rules().isEmpty())
                .card()
                .unfolded()
                .rule("depth")
                .orElseThrow();

        assertThat(depth.key()).isEqualTo("depth");
        assertThat(depth.broken()).isFalse();
        assertThat(depth.pins())
                .isNotEmpty()
                .allSatisfy(
                        pin -> assertThat(pin.at()).isGreaterThan(depth.now()).isLessThan(depth.end()));
        assertThat(depth.spoken()).startsWith("depth ").contains(" binds at ");
    }

    @Test
    void the_plots_of_a_line_follow_one_another_and_after_the_last_the_set_up_is_there_again() {
        unfold("Face the top");
        assertThat(desk.screen().plot()).isEmpty();

        desk.nextPlot();
        Drawing force = test.when(screen -> screen.plot().isPresent()).plot().orElseThrow();
        desk.nextPlot();
        assertThat(desk.screen().plot()).isPresent().get().isNotEqualTo(force);
        int shown = 2;
        while (desk.screen().plot().isPresent()) {
            desk.nextPlot();
            shown++;
            assertThat(shown).isLessThan(6);
        }
        desk.nextPlot();
        desk.back();
        assertThat(desk.screen().plot()).isEmpty();
    }

    @Test
    void the_other_fields_are_one_key_further() {
        unfold("Face the top");
        desk.card().open("more");

        assertThat(fields())
                .extracting(Field::key)
                .containsExactly(
                        "cutter",
                        "holder",
                        "stickOut",
                        "depth",
                        "width",
                        "speed",
                        "feed",
                        "finish",
                        "lastPass",
                        "direction",
                        "coolant",
                        "toolLife",
                        "kneeHeight");
    }

    @Test
    void holders_that_do_not_fit_stand_last_with_what_speaks_against_them() {
        unfold("Face the top");
        Field holder = field("holder");

        assertThat(holder.choices().get(0).against()).isEmpty();
        assertThat(holder.choices().get(holder.choices().size() - 1).against()).isNotEmpty();
    }

    @Test
    void typing_is_worked_out_as_it_goes_and_is_one_step() {
        unfold("Drill 6.8");
        desk.card().typed("stickOut", "8");
        desk.card().typed("stickOut", "80");
        assertThat(field("stickOut").text()).isEqualTo("80");
        desk.card().ink("stickOut");
        Screen screen = test.settled();

        assertThat(field("stickOut").text()).isEqualTo("80 mm");
        assertThat(field("stickOut").standing()).isEqualTo(Standing.INKED);
        assertThat(screen.undo()).isEqualTo("Stick-out of Drill 6.8 mm to 80 mm");
        desk.undo();
        assertThat(desk.screen().undo()).endsWith("into the vise");
    }

    @Test
    void an_edit_made_before_the_last_one_was_worked_out_loses_neither() {
        unfold("Drill 6.8");
        desk.card().typed("stickOut", "80");
        desk.card().left("stickOut");
        desk.card().typed("speed", "900");
        desk.card().left("speed");
        test.settled();

        assertThat(field("stickOut").text()).isEqualTo("80 mm");
        assertThat(field("speed").text()).isEqualTo("900 rev/min");
    }

    @Test
    void what_cannot_be_read_takes_back_what_was_typed_before_it() {
        unfold("Drill 6.8");
        var before = desk.session().job();
        desk.card().typed("stickOut", "8");
        desk.card().typed("stickOut", "8 xy");

        assertThat(desk.session().job()).isEqualTo(before);
        assertThat(desk.screen().card().unfolded().complaint()).startsWith("Stick-out: ");
        desk.card().ink("stickOut");
        assertThat(desk.session().job()).isEqualTo(before);
        desk.card().left("stickOut");
        assertThat(desk.screen().card().unfolded().complaint()).isEmpty();
    }

    @Test
    void a_size_of_nothing_or_less_is_refused_with_its_reason() {
        unfold("Drill 6.8");
        desk.card().typed("stickOut", "-5");
        assertThat(desk.screen().card().unfolded().complaint()).isEqualTo("Stick-out: has to be more than 0");

        desk.card().choose(Selection.PART);
        desk.card().typed("numberOff", "0");
        assertThat(desk.screen().card().unfolded().complaint()).startsWith("Number off: takes a whole number from 1");
    }

    @Test
    void a_whole_line_is_inked_at_once() {
        unfold("Drill 6.8");
        desk.card().inkAll();
        test.settled();

        assertThat(fields()).extracting(Field::standing).containsOnly(Standing.INKED);
        assertThat(desk.screen().undo()).isEqualTo("All of Drill 6.8 mm inked");
    }

    @Test
    void a_blank_that_is_resized_keeps_what_it_may_be_over() {
        desk.card().choose(Selection.PART);
        desk.card().typed("height", "45");
        desk.card().ink("height");
        test.settled();

        var block = (setwright.job.Block) desk.session().job().plan().blank();
        assertThat(block.height().nominal().text()).isEqualTo("45 mm");
        assertThat(block.height().greatestMm()).isEqualTo(46);
        assertThat(desk.screen().undo()).isEqualTo("Blank height to 45 mm");
    }

    @Test
    void the_next_caution_goes_to_its_place_and_offers_what_was_tried() {
        desk.next().open();
        Screen screen = test.when(now -> !now.next().page().remedies().isEmpty());

        assertThat(screen.at().line()).isNotEmpty();
        assertThat(screen.next().sentence())
                .contains("into the")
                .contains("parallel")
                .doesNotContain("(s1/");
        assertThat(screen.next().page().remedies()).hasSizeBetween(1, 3);
        assertThat(screen.next().page().remedies().get(0).effect()).startsWith("Clears it; ");

        String text = screen.next().page().remedies().get(0).text();
        desk.next().take(1);
        screen = test.settled();
        assertThat(screen.head().sentence()).startsWith("Nothing found that stops this plan");
        assertThat(text).startsWith(screen.undo());
    }

    @Test
    void accepting_is_recorded_with_name_time_and_figure_and_survives_undo() {
        desk.next().open();
        desk.next().accept("Ada", "sacrificial parallels");
        test.settled();

        assertThat(desk.session().job().record().acceptances()).singleElement().satisfies(line -> {
            assertThat(line.at()).isEqualTo("2025-05-02T08:00Z");
            assertThat(line.caution()).startsWith("drill-meets-parallel/s1/");
            assertThat(Double.parseDouble(line.value())).isNegative();
        });
        desk.undo();
        assertThat(desk.session().job().record().acceptances()).hasSize(1);
    }

    @Test
    void a_saved_job_carries_the_rows_it_uses_and_opens_whole_beside_another_shop() throws Exception {
        Path file = folder.resolve("block.setwright.json");
        desk.files().save(file, () -> {});
        test.settled();
        assertThat(desk.session().document().unsaved()).isFalse();
        assertThat(desk.session().job().plan().rows()).isNotEmpty();

        assertThat(Files.readString(file)).contains("\"pencil\"").contains("parallels-");
        desk.files().open(file);
        test.settled();
        assertThat(desk.screen().title()).contains("block.setwright.json").doesNotContain("*");
    }

    @Test
    void where_nothing_can_be_written_the_person_is_told_and_the_job_stays_unsaved() {
        unfold("Drill 6.8");
        desk.card().typed("stickOut", "80");
        desk.card().ink("stickOut");
        test.settled();

        desk.files().save(folder.resolve("nowhere").resolve("block.setwright.json"), () -> {});
        test.settled();
        assertThat(desk.screen().notice().title()).contains("could not be saved");
        assertThat(desk.session().document().unsaved()).isTrue();
        desk.closeNotice();
        assertThat(desk.screen().notice().lines()).isEmpty();
    }

    @Test
    void the_explanation_of_a_caution_names_its_source() {
        assertThat(desk.next().explanation().orElseThrow().lines())
                .anySatisfy(line -> assertThat(line).startsWith("Source: "));
    }

    @Test
    void a_job_that_cannot_be_worked_out_says_why_and_undo_leads_back() {
        desk.card().choose(Selection.PART);
        desk.card().typed("machine", "no-such-machine");
        Screen screen = test.when(now -> now.head().sentence().startsWith("This could not be worked out"));
        assertThat(screen.head().sentence()).contains("no-such-machine");

        desk.undo();
        assertThat(test.settled().head().sentence()).startsWith("Do not run");
    }

    private void unfold(String beginning) {
        desk.card().choose(line(beginning).key());
    }

    private Line line(String beginning) {
        return desk.screen().card().lines().stream()
                .filter(line -> line.spoken().startsWith(beginning))
                .findFirst()
                .orElseThrow();
    }

    private List<Field> fields() {
        return desk.screen().card().unfolded().fields().stream()
                .flatMap(List::stream)
                .toList();
    }

    private Field field(String key) {
        return fields().stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
