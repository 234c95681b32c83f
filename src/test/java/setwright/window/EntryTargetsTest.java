package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Slot;
import setwright.job.Standing;
import setwright.window.model.Badge;
import setwright.window.model.Field;
import setwright.window.model.Line;
import setwright.window.model.Screen;
import setwright.window.state.Entry;

/**
 * What a person who has done it once may need in keys, Enter counted and a chord counted once. Seconds are those of the
 * machine alone: how long the window takes, not how long the person thinks and types.
 */
@WindowTest
class EntryTargetsTest {
    @TempDir
    Path folder;

    private OnScreen window;
    private CountedKeys keys;

    @BeforeEach
    void open() throws Exception {
        window = new OnScreen(null, folder);
        keys = new CountedKeys();
    }

    @Test
    void the_block_with_four_tapped_holes_and_a_slot_from_an_empty_window_to_a_plan_without_a_stop() {
        long start = System.nanoTime();
        int block = blockAndMaterial();
        int off = numberOff();
        int holes = tappedHoles();
        int slot = slot();
        keys.enter();
        until("the page is closed", screen -> !screen.entry().open());
        settled();
        int close = keys.counted();
        long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start);

        assertThat(block).as("keys of block and material").isLessThanOrEqualTo(16);
        assertThat(holes).as("keys of the tapped holes").isLessThanOrEqualTo(20);
        assertThat(slot).as("keys of the slot").isLessThanOrEqualTo(12);
        assertThat(block + off + holes + slot + close)
                .as("keys of the whole part")
                .isLessThanOrEqualTo(60);
        assertThat(seconds).as("seconds of the machine").isLessThanOrEqualTo(90);
        assertThat(job().plan().numberOff()).isEqualTo(1);
        assertThat(job().plan().material()).isEqualTo("aluminium-6061");
        assertThat(job().plan().features())
                .satisfiesExactly(
                        hole -> assertThat(((Hole) hole).thread()).isEqualTo("M6"),
                        cut -> assertThat(((Slot) cut).width().nominal().inside())
                                .isEqualTo(12));
        Screen screen = window.onEventThread(window::screen);
        assertThat(screen.head().badge().square()).as(screen.head().sentence()).isNotEqualTo(Badge.Square.FILLED);
        assertThat(screen.card().lines()).extracting(Line::spoken).anyMatch(line -> line.startsWith("Tap M6"));
        assertThat(screen.card().lines()).extracting(Line::spoken).anyMatch(line -> line.startsWith("Mill the slot"));
    }

    @Test
    void the_same_part_is_entered_with_the_mouse_and_no_target_is_lower_than_28_px() {
        Mouse mouse = new Mouse(window);
        mouse.menu("File", "file.new");
        until("the title block asks", screen -> screen.entry().page() == Entry.Page.NEW_JOB);
        mouse.click("field.title.BLANK");
        keys.chord(KeyEvent.VK_A, KeyEvent.VK_CONTROL).type("100x60x25");
        mouse.click("field.title.MATERIAL");
        keys.chord(KeyEvent.VK_A, KeyEvent.VK_CONTROL).type("6061");
        mouse.click("entry.note");
        keys.type("4x M6 thru");
        window.until("the blank is asked", () -> window.find("entry.answer") != null);
        mouse.click("entry.answer");
        keys.chord(KeyEvent.VK_A, KeyEvent.VK_CONTROL).type("76x36");
        mouse.click("entry.take");
        until("the note stands", screen -> screen.entry().notes().size() == 1);
        mouse.click("entry.note");
        keys.type("slot 12x8");
        mouse.click("entry.take");
        until("the note stands", screen -> screen.entry().notes().size() == 2);
        window.onEventThread(() -> {
            window.all().forEach(Mouse::assertHighEnough);
            return true;
        });
        mouse.click("entry.close");
        until("the page is closed", screen -> !screen.entry().open());
        settled();

        Screen screen = window.onEventThread(window::screen);
        assertThat(job().plan().features()).hasSize(2);
        assertThat(job().plan().material()).isEqualTo("aluminium-6061");
        assertThat(screen.head().badge().square()).as(screen.head().sentence()).isNotEqualTo(Badge.Square.FILLED);
    }

    @Test
    void the_quick_check_is_worked_with_the_mouse_and_no_target_is_lower_than_28_px() {
        Mouse mouse = new Mouse(window);
        mouse.menu("View", "view.quick");
        window.until("it is open", () -> window.find("field.cut") != null);
        mouse.click("field.cut");
        keys.chord(KeyEvent.VK_A, KeyEvent.VK_CONTROL).type("2x4");
        until(
                "it answers",
                screen -> !screen.quick().answers().isEmpty()
                        && field(screen, "cut").equals("2x4"));
        window.onEventThread(() -> {
            window.all().forEach(Mouse::assertHighEnough);
            return true;
        });
        mouse.click("quick.keep");
        until("it is a job", screen -> screen.title().contains("quick check"));
    }

    private int blockAndMaterial() {
        keys.chord(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        until("the title block asks", screen -> screen.entry().page() == Entry.Page.NEW_JOB);
        window.until(
                "the blank has the keyboard",
                () -> window.found("field.title.BLANK").isFocusOwner());
        keys.type("100x60x25").enter().type("6061").enter();
        until(
                "it is read back",
                screen -> screen.entry().readBack().startsWith("Block 100 mm x 60 mm x 25 mm, Aluminium 6061"));
        return keys.counted();
    }

    private int numberOff() {
        keys.enter();
        window.until(
                "the note has the keyboard", () -> window.found("entry.note").isFocusOwner());
        return keys.counted();
    }

    private int tappedHoles() {
        keys.type("4x M6 thru").enter();
        window.until(
                "the blank has the keyboard", () -> window.found("entry.answer").isFocusOwner());
        keys.type("76x36").enter();
        until("the note stands", screen -> screen.entry().notes().size() == 1);
        return keys.counted();
    }

    private int slot() {
        keys.type("slot 12x8").enter().enter();
        until("the note stands", screen -> screen.entry().notes().size() == 2);
        return keys.counted();
    }

    @Test
    void a_value_is_changed_with_two_keys_and_its_digits() {
        unfold("Drill 6.8");
        window.focus("field.stickOut");
        window.focus("field.holder");
        keys.key(KeyEvent.VK_TAB).type("80").enter();
        until("the plan has it", screen -> has(screen, line -> line.spoken().contains("80 mm out")));

        assertThat(keys.counted() - "80".length()).isLessThanOrEqualTo(2);
    }

    @Test
    void the_next_caution_and_its_first_remedy_take_two_keys() {
        String worst = window.onEventThread(() -> window.screen().next().caution());
        keys.key(KeyEvent.VK_F4);
        window.until("remedies are offered", () -> window.find("remedy.1") != null);
        keys.type("1");
        until(
                "it is cleared",
                screen -> screen.plan().isPresent() && !screen.next().caution().equals(worst));
        settled();
        assertThat(window.onEventThread(() -> window.screen().next().caution())).isNotEqualTo(worst);

        assertThat(keys.counted()).isLessThanOrEqualTo(2);
    }

    @Test
    void another_holder_for_a_line_takes_eight_keys() {
        window.focus("line." + window.line("Drill 6.8").key());
        keys.enter();
        window.until("it is unfolded", () -> window.find("field.holder") != null);
        keys.key(KeyEvent.VK_TAB).key(KeyEvent.VK_TAB);
        window.until(
                "the holder has the keyboard",
                () -> window.found("field.holder").isFocusOwner());
        keys.type("er").enter();
        until(
                "the plan has it",
                screen -> has(
                        screen,
                        line -> line.spoken().startsWith("Drill 6.8")
                                && line.spoken().contains("ER32 collet chuck, R8,")));

        assertThat(keys.counted()).isLessThanOrEqualTo(8);
    }

    @Test
    void all_that_is_pencilled_in_a_line_is_inked_with_one_key() {
        unfold("Drill 6.8");
        keys.chord(KeyEvent.VK_I, KeyEvent.VK_CONTROL);
        until(
                "nothing of it is pencilled",
                screen -> has(
                        screen,
                        line -> line.spoken().startsWith("Drill 6.8")
                                && !line.spoken().contains("pencilled")));

        assertThat(keys.counted()).isLessThanOrEqualTo(1);
    }

    @Test
    void the_same_again_in_another_quantity_takes_eight_keys() {
        keys.chord(KeyEvent.VK_N, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        window.until(
                "the number off has the keyboard",
                () -> window.find("field.numberOff") != null
                        && window.found("field.numberOff").isFocusOwner());
        keys.type("24").enter();
        until("the plan has it", screen -> has(screen, line -> line.spoken().contains("24 off")));

        assertThat(keys.counted()).isLessThanOrEqualTo(8);
        assertThat(window.onEventThread(window::screen).title()).contains("same again");
    }

    @Test
    void the_quick_check_answers_within_twenty_five_keys_of_the_start() {
        keys.key(KeyEvent.VK_F9);
        window.until(
                "the material has the keyboard",
                () -> window.find("field.material") != null
                        && window.found("field.material").isFocusOwner());
        keys.type("304")
                .enter()
                .type("30")
                .enter()
                .type("drill6")
                .enter()
                .enter()
                .enter()
                .enter()
                .type("20")
                .enter();
        until(
                "it answers",
                screen -> !screen.quick().answers().isEmpty()
                        && field(screen, "cut").equals("20")
                        && field(screen, "operation").equals("DRILL")
                        && field(screen, "material").equals("stainless-304"));

        assertThat(keys.counted()).isLessThanOrEqualTo(25);
        assertThat(window.onEventThread(window::screen).quick().answers())
                .anySatisfy(answer -> assertThat(answer.printed()).endsWith("rev/min"));
        assertThat(window.onEventThread(window::screen).quick().fields().get(2).standing())
                .isEqualTo(Standing.INKED);
    }

    private static String field(Screen screen, String key) {
        return screen.quick().fields().stream()
                .filter(field -> field.key().equals(key))
                .map(Field::text)
                .findFirst()
                .orElse("");
    }

    private static boolean has(Screen screen, Predicate<Line> wanted) {
        return screen.card().lines().stream().anyMatch(wanted);
    }

    private Job job() {
        return window.onEventThread(() -> window.workbench.desk().session().job());
    }

    private void unfold(String line) {
        window.focus("line." + window.line(line).key());
        window.keys(KeyEvent.VK_SPACE);
        window.until(line + " is unfolded", () -> window.find("field.stickOut") != null);
    }

    private void until(String what, Predicate<Screen> holds) {
        window.until(what, () -> holds.test(window.screen()));
    }

    private void settled() {
        window.until(
                "the newest state is worked out", () -> !window.workbench.desk().busy());
    }
}
