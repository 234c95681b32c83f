package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.window.model.Field;
import setwright.window.model.Quick;
import setwright.window.model.Screen;
import setwright.window.state.QuickField;

class QuickDeskTest {
    @TempDir
    Path folder;

    private TestDesk test;

    @BeforeEach
    void open() {
        test = new TestDesk(folder);
        test.settled();
        test.desk().quick().open();
    }

    @AfterEach
    void close() {
        test.close();
    }

    @Test
    void the_first_time_every_field_is_filled_and_answered_without_a_key() {
        Quick quick = answered();

        assertThat(quick.fields()).hasSize(9).allSatisfy(field -> {
            assertThat(field.text()).as(field.label()).isNotBlank();
            assertThat(field.standing()).as(field.label()).isEqualTo(Standing.PENCILLED);
        });
        assertThat(quick.answers()).extracting(Quick.Answer::name).contains("Speed", "Feed", "Room");
        assertThat(quick.assumed()).contains("block");
    }

    @Test
    void a_drill_asks_for_drilling_and_a_harder_material_for_a_slower_spindle() {
        drill();
        type(QuickField.MATERIAL, "aluminium-6061");
        Quick soft = answered();
        type(QuickField.MATERIAL, "stainless-304");
        Quick hard = answered();

        assertThat(field(soft, QuickField.OPERATION).text()).isEqualTo("DRILL");
        assertThat(soft.answers()).extracting(Quick.Answer::name).contains("Speed", "Feed", "Depth", "Room", "Held");
        assertThat(number(hard, "Speed")).isLessThan(number(soft, "Speed"));
    }

    @Test
    void what_cannot_be_read_names_its_field_and_stops_the_answers() {
        answered();
        type(QuickField.CUT, "5 x");
        Quick quick = test.desk().screen().quick();

        assertThat(quick.complaint()).startsWith("Depth x width");
        assertThat(field(quick, QuickField.CUT).text()).isEqualTo("5 x");
        assertThat(quick.answers()).isEmpty();
        assertThat(quick.keepable()).isFalse();

        type(QuickField.CUT, "5 x 4");
        assertThat(answered().complaint()).isEmpty();
    }

    @Test
    void a_stick_out_is_inked_by_typing_and_given_back_to_the_pencil() {
        String pencilled = field(answered(), QuickField.STICK_OUT).text();
        type(QuickField.STICK_OUT, "75");
        test.desk().quick().left("stick_out");
        assertThat(field(answered(), QuickField.STICK_OUT))
                .returns("75", Field::text)
                .returns(Standing.INKED, Field::standing);

        test.desk().quick().pencil("stick_out");
        assertThat(field(answered(), QuickField.STICK_OUT))
                .returns(pencilled, Field::text)
                .returns(Standing.PENCILLED, Field::standing);
    }

    @Test
    void the_height_over_the_jaws_is_the_height_that_was_asked() {
        drill();
        type(QuickField.HEIGHT, "10");
        answered();
        test.desk().keepQuick();
        test.settled();

        var plan = test.desk().planned().orElseThrow().plan();
        var heights = plan.part().setUps().get(0);
        assertThat(heights.heights().startTop() - heights.heights().jawTop()).isCloseTo(10, within(0.01));
    }

    @Test
    void kept_as_a_job_it_is_an_untitled_job_with_its_operation_in_ink_and_the_page_closes() {
        drill();
        answered();
        test.desk().keepQuick();
        Screen screen = test.settled();

        assertThat(screen.quick().open()).isFalse();
        assertThat(screen.title()).contains("quick check");
        assertThat(test.desk().session().job().plan().setUps().get(0).operations())
                .singleElement()
                .satisfies(operation -> {
                    assertThat(operation.kind()).isEqualTo(Operation.Kind.DRILL);
                    assertThat(operation.cutter().standing()).isEqualTo(Standing.INKED);
                });
    }

    @Test
    void leaving_it_leaves_the_open_job_alone_and_the_next_time_the_fields_are_as_they_were() {
        var job = test.desk().session().job();
        type(QuickField.CUT, "2 x 3");
        test.desk().quick().back("cut");
        assertThat(test.desk().screen().quick().open()).isFalse();
        assertThat(test.desk().session().job()).isEqualTo(job);

        test.desk().quick().open();
        assertThat(field(answered(), QuickField.CUT).text()).isEqualTo("2 x 3");
        assertThat(test.desk().settings().quick().text(QuickField.CUT)).isEqualTo("2 x 3");
    }

    private static org.assertj.core.data.Offset<Double> within(double mm) {
        return org.assertj.core.data.Offset.offset(mm);
    }

    private void drill() {
        String drill = field(answered(), QuickField.CUTTER).choices().stream()
                .filter(choice -> choice.text().equals("Drill 6 mm, jobber")
                        || choice.text().equals("Drill 6.0 mm, jobber"))
                .findFirst()
                .orElseThrow()
                .value();
        type(QuickField.CUTTER, drill);
    }

    private void type(QuickField field, String text) {
        test.desk().quick().typed(field.key(), text);
    }

    private Quick answered() {
        return test.when(screen -> !screen.quick().answers().isEmpty()).quick();
    }

    private static Field field(Quick quick, QuickField wanted) {
        return quick.fields().get(wanted.ordinal());
    }

    private static double number(Quick quick, String name) {
        return quick.answers().stream()
                .filter(answer -> answer.name().equals(name))
                .map(answer -> Double.parseDouble(answer.printed().split(" ")[0]))
                .findFirst()
                .orElseThrow();
    }
}
