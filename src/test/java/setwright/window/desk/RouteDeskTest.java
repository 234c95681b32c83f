package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.window.model.Addable;
import setwright.window.model.Line;
import setwright.window.model.RouteCard;
import setwright.window.model.Screen;

class RouteDeskTest {
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
    void a_set_up_that_is_added_lies_turned_over_and_is_chosen() {
        List<String> before = lines(desk.screen());
        desk.route().add("s1");
        Screen screen = test.settled();

        assertThat(screen.route()).extracting(RouteCard::title).containsExactly("1  Top side up", "2  Bottom side up");
        assertThat(screen.at().setUp()).isEqualTo("s2");
        assertThat(screen.undo()).isEqualTo("A set-up added behind Top side up");
        desk.undo();
        assertThat(test.settled().route()).hasSize(1);
        assertThat(lines(desk.screen())).isEqualTo(before);
    }

    @Test
    void moving_and_duplicating_set_ups_loses_no_operation() {
        int operations = lines(desk.screen()).size();
        desk.route().add("s1");
        test.settled();
        desk.route().move("s2", -1);
        assertThat(test.settled().route()).extracting(RouteCard::setUp).containsExactly("s2", "s1");
        assertThat(desk.screen().undo()).isEqualTo("Bottom side up earlier");

        desk.route().duplicate("s1");
        Screen screen = test.settled();
        assertThat(screen.route()).extracting(RouteCard::setUp).containsExactly("s2", "s1", "s3");
        assertThat(screen.at().setUp()).isEqualTo("s3");
        assertThat(lines(screen)).hasSize(operations);
        desk.route().choose("s1");
        assertThat(lines(desk.screen())).hasSize(operations);
    }

    @Test
    void a_second_edit_does_not_wait_for_the_first_to_be_worked_out() {
        desk.route().add("s1");
        desk.route().delete("s2");
        Screen screen = test.settled();

        assertThat(screen.route()).extracting(RouteCard::setUp).containsExactly("s1");
    }

    @Test
    void what_the_drawing_still_asks_for_comes_back_in_pencil_and_that_is_said() {
        String drill = line("Drill 6.8").key();
        desk.card().choose(drill);
        desk.card().typed("stickOut", "80");
        desk.card().ink("stickOut");
        test.settled();

        desk.operations().delete(drill);
        assertThat(desk.screen().next().sentence())
                .startsWith("Back in pencil, for the drawing still asks for it: Drill 6.8 mm (Top side up)");
        test.settled();
        assertThat(line("Drill 6.8").spoken()).contains("mm (pencilled) out").doesNotContain("80 mm out");
        assertThat(desk.screen().undo()).isEqualTo("Drill 6.8 mm deleted");
    }

    @Test
    void a_copy_is_deleted_for_good() {
        String drill = line("Drill 6.8").key();
        desk.operations().duplicate(drill);
        Screen screen = test.settled();
        assertThat(screen.at().line()).isEqualTo(drill + "-2");

        desk.operations().delete(drill + "-2");
        assertThat(desk.screen().next().sentence()).doesNotContain("Back in pencil");
        assertThat(lines(test.settled())).doesNotContain(drill + "-2").contains(drill);
    }

    @Test
    void an_operation_moves_within_its_set_up() {
        List<String> before = lines(desk.screen());
        String last = before.get(before.size() - 1);
        desk.operations().move(last, -1);

        List<String> after = lines(test.settled());
        assertThat(after.indexOf(last)).isEqualTo(before.size() - 2);
        assertThat(after).containsExactlyInAnyOrderElementsOf(before);
    }

    @Test
    void what_can_be_added_makes_what_the_chosen_line_makes() {
        String drill = line("Drill 6.8").key();
        List<Addable> addable = desk.operations().addable(drill);
        assertThat(addable).extracting(Addable::text).contains("Drill: 4x M8 thru", "Ream: 4x M8 thru", "Face: 38");

        desk.operations().add(drill, addable.get(2));
        Screen screen = test.settled();
        assertThat(lines(screen).indexOf(screen.at().line()))
                .isEqualTo(lines(screen).indexOf(drill) + 1);
        assertThat(screen.undo()).isEqualTo("Drill: 4x M8 thru added");
    }

    @Test
    void on_a_side_without_features_nothing_can_be_added() {
        desk.route().add("s1");
        test.settled();

        assertThat(desk.operations().addable("")).isEmpty();
    }

    @Test
    void another_side_up_renames_the_set_up_and_takes_the_pencilled_operations_along() {
        desk.route().add("s1");
        test.settled();
        desk.card().choose("holding");
        desk.card().open("more");
        desk.card().typed("up", "LEFT");
        Screen screen = test.settled();

        assertThat(screen.route()).extracting(RouteCard::title).containsExactly("1  Top side up", "2  Left side up");
        assertThat(screen.undo()).isEqualTo("Side up of Bottom side up to left");
    }

    private static List<String> lines(Screen screen) {
        return screen.card().lines().stream().map(Line::key).toList();
    }

    private Line line(String beginning) {
        return desk.screen().card().lines().stream()
                .filter(line -> line.spoken().startsWith(beginning))
                .findFirst()
                .orElseThrow();
    }
}
