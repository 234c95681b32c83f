package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.job.JobRecord;
import setwright.window.state.Way;

@WindowTest
class WorkbenchTest {
    @TempDir
    Path folder;

    private OnScreen window;

    @BeforeEach
    void open() throws Exception {
        window = new OnScreen(null, folder);
    }

    @Test
    void the_first_start_shows_a_practice_copy_with_something_to_mend() {
        var screen = window.onEventThread(window::screen);

        assertThat(screen.title()).contains("practice copy").doesNotContain("*");
        assertThat(screen.head().sentence()).startsWith("Do not run");
        assertThat(screen.next().hint()).contains("F4");
        assertThat(screen.undo()).endsWith("into the vise");
    }

    @Test
    void the_card_has_the_keyboard_from_the_start() {
        window.until(
                "the first line has the keyboard",
                () -> window.found("line.part").isFocusOwner());
    }

    @Test
    void the_keyboard_goes_from_line_to_line_and_unfolds_one() {
        window.keys(KeyEvent.VK_F2);
        window.until(
                "the first line has the keyboard",
                () -> window.found("line.part").isFocusOwner());
        window.keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        window.until("the first operation is unfolded", () -> window.find("field.stickOut") != null);
        assertThat(window.onEventThread(() -> window.screen().at().line())).contains("face");

        window.keys(KeyEvent.VK_ENTER);
        window.until("it is folded again", () -> window.find("field.stickOut") == null);
    }

    @Test
    void a_stick_out_that_is_typed_changes_the_figures_and_undo_brings_them_back() {
        unfold("Drill 6.8");
        String before = window.onEventThread(this::figures);

        window.focus("field.stickOut");
        window.digits("80");
        window.keys(KeyEvent.VK_ENTER);
        window.until("it is 80 mm out", () -> spoken("Drill 6.8").contains("80 mm out"));
        window.until("the figures follow", () -> !figures().equals(before));
        assertThat(window.onEventThread(() -> window.screen().undo())).startsWith("Stick-out of Drill 6.8 mm to 80 mm");

        window.control(KeyEvent.VK_Z);
        window.until("it is pencilled again", () -> spoken("Drill 6.8").contains("mm (pencilled) out"));
        window.until("the figures are as they were", () -> figures().equals(before));
    }

    @Test
    void delete_gives_an_inked_value_back_to_the_pencil() {
        unfold("Drill 6.8");
        window.focus("field.speed");
        window.keys(KeyEvent.VK_ENTER);
        window.until("it is inked", () -> !spoken("Drill 6.8").contains("rev/min (pencilled)"));

        window.keys(KeyEvent.VK_DELETE);
        window.until("it is pencilled", () -> spoken("Drill 6.8").contains("rev/min (pencilled)"));
    }

    @Test
    void arrows_choose_from_what_the_shop_owns_and_the_caution_follows() {
        window.focus("line.holding");
        window.keys(KeyEvent.VK_SPACE);
        window.focus("field.parallels");
        window.keys(KeyEvent.VK_UP);
        window.until(
                "thinner parallels clear it",
                () -> window.screen().head().sentence().startsWith("Nothing found that stops"));

        window.keys(KeyEvent.VK_DOWN);
        window.until(
                "the thick ones are back",
                () -> !window.screen().next().caution().isEmpty());
        assertThat(window.onEventThread(() -> window.screen().undo())).endsWith("into the vise");
        window.keys(KeyEvent.VK_F4);
        window.until(
                "the caution is opened", () -> window.screen().next().page().open());
    }

    @Test
    void what_cannot_be_read_is_said_beside_the_field_and_leaves_the_job_as_it_was() {
        unfold("Drill 6.8");
        var job = window.onEventThread(() -> window.workbench.desk().session().job());
        window.focus("field.stickOut");
        window.keys(KeyEvent.VK_6, KeyEvent.VK_X);

        window.until(
                "it complains",
                () -> ((JTextComponent) window.found("complaint")).getText().startsWith("Stick-out"));
        assertThat(window.onEventThread(() -> window.workbench.desk().session().job()))
                .isEqualTo(job);

        window.keys(KeyEvent.VK_ESCAPE);
        window.until(
                "the old text is back",
                () -> ((JTextField) window.found("field.stickOut")).getText().endsWith("mm"));
    }

    @Test
    void a_worked_figure_opens_into_rule_numbers_and_source() {
        unfold("Drill 6.8");
        window.focus("figure.torque");
        window.keys(KeyEvent.VK_SPACE);

        window.until("the working stands", () -> window.find("working.torque") != null);
        assertThat(window.onEventThread(() -> ((JTextComponent) window.found("working.torque")).getText()))
                .contains("source:");
    }

    @Test
    void the_first_remedy_of_the_worst_caution_clears_it() {
        window.keys(KeyEvent.VK_F4);
        window.until("remedies are offered", () -> window.find("remedy.1") != null);
        assertThat(window.onEventThread(() -> window.screen().at().line())).isNotEmpty();

        window.keys(KeyEvent.VK_1);
        window.until(
                "nothing stops the plan",
                () -> window.screen().head().sentence().startsWith("Nothing found that stops"));
        assertThat(window.onEventThread(() -> window.screen().next().caution())).isEmpty();
    }

    @Test
    void a_stop_is_accepted_with_the_leads_name_and_a_reason() {
        window.keys(KeyEvent.VK_F4);
        window.until("it can be accepted", () -> window.find("accept.reason") != null);
        window.focus("accept.by");
        window.keys(KeyEvent.VK_A, KeyEvent.VK_D, KeyEvent.VK_A);
        window.focus("accept.reason");
        window.keys(KeyEvent.VK_1, KeyEvent.VK_O, KeyEvent.VK_F, KeyEvent.VK_F, KeyEvent.VK_ENTER);
        window.until("it is accepted", () -> window.screen().head().sentence().contains("the lead accepted"));

        List<JobRecord.Acceptance> accepted = window.onEventThread(
                () -> window.workbench.desk().session().job().record().acceptances());
        assertThat(accepted).singleElement().satisfies(line -> {
            assertThat(line.role()).isEqualTo(JobRecord.Role.LEAD);
            assertThat(line.by()).isEqualTo("ada");
            assertThat(line.reason()).isEqualTo("1off");
        });
    }

    @Test
    void one_key_goes_from_metric_to_inch_and_back() {
        window.control(KeyEvent.VK_U);
        window.until("it is in inches", () -> spoken("Drill 6.8").contains("in/min"));

        window.control(KeyEvent.VK_U);
        window.until("it is in millimetres", () -> spoken("Drill 6.8").contains("mm/min"));
    }

    @Test
    void a_job_is_saved_and_opens_as_it_was() {
        unfold("Drill 6.8");
        window.focus("field.stickOut");
        window.digits("80");
        window.keys(KeyEvent.VK_ENTER);
        window.until("it is 80 mm out", () -> spoken("Drill 6.8").contains("80 mm out"));
        Path file = folder.resolve("block.setwright.json");
        window.run(() -> window.workbench.desk().files().save(file, () -> {}));
        settle();
        assertThat(title()).contains("block.setwright.json").doesNotContain("*");
        var saved = window.onEventThread(() -> window.workbench.desk().session().job());

        window.run(() -> window.workbench.desk().files().open(file));
        settle();
        assertThat(window.onEventThread(() -> window.workbench.desk().session().job()))
                .isEqualTo(saved);
        assertThat(window.line("Drill 6.8").spoken()).contains("80 mm out");
    }

    @Test
    void a_broken_file_names_its_problems_and_leaves_the_open_job() throws Exception {
        Path file = folder.resolve("broken.setwright.json");
        Files.writeString(
                file, "{\"format\": \"setwright job\", \"version\": 1,\n \"plan\": {", StandardCharsets.UTF_8);
        var job = window.onEventThread(() -> window.workbench.desk().session().job());

        window.run(() -> window.workbench.desk().files().open(file));

        window.until("the problems stand there", () -> window.find("notice.lines") != null);
        assertThat(window.onEventThread(() -> window.screen().notice().lines()))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).contains("line "));
        assertThat(window.onEventThread(() -> window.workbench.desk().session().job()))
                .isEqualTo(job);

        window.keys(KeyEvent.VK_ESCAPE);
        window.until("the card is back", () -> window.find("line.part") != null);
    }

    @Test
    void a_hold_point_does_not_yield_to_space() {
        window.control(KeyEvent.VK_2);
        window.until("the first step is there", () -> window.screen().walk().number() == 1);
        assertThat(window.onEventThread(() -> window.screen().walk().holds())).isTrue();
        window.focus("walk.drawing");

        window.keys(KeyEvent.VK_SPACE);
        window.until("it asks for a name", () -> window.found("walk.by").isFocusOwner());
        assertThat(window.onEventThread(() -> window.screen().walk().number())).isEqualTo(1);

        window.keys(KeyEvent.VK_A, KeyEvent.VK_ENTER);
        window.until("the page is turned", () -> window.screen().walk().number() == 2);
        assertThat(window.onEventThread(
                        () -> window.workbench.desk().session().job().record().ticks()))
                .singleElement()
                .satisfies(tick -> assertThat(tick.by()).isEqualTo("a"));
    }

    @Test
    void a_signature_fits_until_the_plan_changes() {
        window.control(KeyEvent.VK_3);
        window.until("the review is there", () -> window.find("sign.by") != null);
        window.focus("sign.by");
        window.keys(KeyEvent.VK_A, KeyEvent.VK_ENTER);
        window.until("it is signed", () -> signed().startsWith("Planned: a,") && !signed().contains("since then"));

        window.control(KeyEvent.VK_U);
        window.until("the signature no longer fits", () -> signed().contains("since then changed"));
    }

    @Test
    void in_every_way_targets_are_high_enough_letters_large_enough_and_nothing_is_nameless() {
        unfold("Drill 6.8");
        window.keys(KeyEvent.VK_F4);
        window.until("remedies are offered", () -> window.find("remedy.1") != null);
        for (Way way : Way.values()) {
            window.onEventThread(() -> {
                window.workbench.desk().way(way);
                return way;
            });
            settle();
            window.onEventThread(() -> {
                window.all().forEach(this::assertReadable);
                return way;
            });
        }
    }

    private void assertReadable(Component component) {
        if (component instanceof JLabel || component instanceof JTextComponent || component instanceof AbstractButton) {
            assertThat(component.getFont().getSize()).as(described(component)).isGreaterThanOrEqualTo(13);
        }
        boolean target = component instanceof AbstractButton
                || component instanceof JTextField
                || component instanceof JComboBox<?>;
        boolean inside = component.getParent() instanceof JComboBox<?>
                || component.getParent() instanceof javax.swing.JScrollBar
                || component instanceof javax.swing.JMenu;
        if (target && !inside && component.isShowing()) {
            assertThat(component.getHeight()).as(described(component)).isGreaterThanOrEqualTo(28);
            assertThat(component.getAccessibleContext().getAccessibleName())
                    .as(described(component))
                    .isNotBlank();
        }
    }

    private static String described(Component component) {
        return component.getClass().getSimpleName() + " " + component.getName();
    }

    private void unfold(String line) {
        String key = window.line(line).key();
        window.focus("line." + key);
        window.keys(KeyEvent.VK_SPACE);
        window.until(line + " is unfolded", () -> window.find("field.stickOut") != null);
    }

    private void settle() {
        window.until(
                "the newest state is worked out", () -> !window.workbench.desk().busy());
    }

    private String figures() {
        return window.screen().card().unfolded().figures().stream()
                .map(figure -> figure.name() + " " + figure.printed())
                .toList()
                .toString();
    }

    /** A line of the card as it is heard; empty while it is not there. */
    private String spoken(String line) {
        return window.screen().card().lines().stream()
                .map(setwright.window.model.Line::spoken)
                .filter(spoken -> spoken.startsWith(line))
                .findFirst()
                .orElse("");
    }

    private String title() {
        return window.onEventThread(() -> window.workbench.frame().getTitle());
    }

    private String signed() {
        return window.screen().review().sections().stream()
                .filter(section -> section.heading().equals("Signed"))
                .flatMap(section -> section.items().stream())
                .map(item -> item.text())
                .findFirst()
                .orElse("");
    }
}
