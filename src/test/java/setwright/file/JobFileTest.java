package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.Plannable;
import setwright.shop.Shop;
import setwright.shop.ShopRow;

class JobFileTest {
    private static final Job JOB = Samples.bearingBlock();

    @Test
    void a_job_comes_back_as_it_was_written() {
        assertThat(opened(JobFile.text(JOB, null), Samples.shop()).job()).isEqualTo(JOB);
        assertThat(opened(JobFile.text(JOB, Samples.drawnUp()), Samples.shop()).job())
                .isEqualTo(JOB);
    }

    @Test
    void a_job_opens_whole_where_the_shop_has_nothing() {
        assertThat(opened(JobFile.text(JOB, null), Shop.of(List.of())).job()).isEqualTo(JOB);
    }

    @Test
    void a_text_that_was_read_is_written_letter_by_letter_as_before() {
        String text = JobFile.text(JOB, null);

        assertThat(JobFile.text(opened(text, Samples.shop()).job(), null)).isEqualTo(text);
        assertThat(text).startsWith("{\n  \"format\": \"setwright job\",\n  \"version\": 1,\n  \"plan\": {\n");
        assertThat(text).endsWith("}\n").doesNotContain("\r").doesNotContain("\t");
    }

    @Test
    void values_stand_as_typed_pencil_is_left_out_and_a_measured_value_says_by_whom_and_when() {
        String text = JobFile.text(JOB, null);

        assertThat(text)
                .contains("\"stickOut\": {\"measured\": \"1-1/2 in\", \"by\": \"Ada\", \"at\": \"2025-03-14\"}")
                .contains("\"depth\": \"1 mm\"")
                .contains(
                        "{\"id\": \"o2\", \"kind\": \"spot\", \"features\": [\"hole1\", \"hole2\"], \"reason\": \"\"}")
                .contains("\"faces\": {\"front\": \"machined\", \"left\": \"sawn\", \"top\": \"sawn\"}")
                .doesNotContain("kneeHeight")
                .doesNotContain("null");
    }

    @Test
    void every_row_copy_takes_one_line() {
        long rows = JobFile.text(JOB, null)
                .lines()
                .filter(line -> line.startsWith("      {\"kind\": ") && line.contains("\"source\": "))
                .count();

        assertThat(rows).isEqualTo(JOB.plan().rows().size());
    }

    @Test
    void the_pencil_is_written_by_set_up_and_operation_where_they_are_open_and_whole_where_they_are_added() {
        Tree.JsonObject file = (Tree.JsonObject)
                Json.read(JobFile.text(JOB, Samples.drawnUp())).tree().orElseThrow();

        assertThat(Json.text(file.get("pencil").orElseThrow(), Json.Layout.ONE_LINE))
                .isEqualTo("{\"setUps\": [{\"id\": \"s1\","
                        + " \"holding\": {\"kind\": \"vise\", \"jaws\": \"none\", \"jawCut\": \"uncut\","
                        + " \"jawCutDepth\": \"0 mm\", \"parallelHeight\": \"20 mm\", \"parallelInset\": \"0 mm\","
                        + " \"between\": \"nothing\", \"parts\": 1, \"vises\": 1, \"apart\": \"0 mm\"},"
                        + " \"operations\": [{\"id\": \"o1\", \"width\": \"12 mm\", \"finish\": \"0.2 mm\", \"lastPass\": \"one\", \"toolLife\": \"60 min\", \"method\": \"table-feed\","
                        + " \"kneeHeight\": \"150 mm\"},"
                        + " {\"id\": \"o7\", \"kind\": \"face\", \"features\": [\"hole2\"], \"depth\": \"2 mm\","
                        + " \"width\": \"12 mm\", \"finish\": \"0.2 mm\", \"lastPass\": \"one\", \"toolLife\": \"60 min\", \"method\": \"table-feed\", \"kneeHeight\": \"150 mm\","
                        + " \"reason\": \"the belt was on 660\"}]}]}");
    }

    @Test
    void pencil_in_a_file_never_becomes_ink() {
        JobRead.Opened read = opened(JobFile.text(JOB, Samples.drawnUp()), Samples.shop());

        assertThat(read.job().plan().setUps().get(0).operations().get(0).kneeHeight())
                .isEqualTo(Plannable.pencilled());
    }

    @Test
    void a_job_without_a_record_has_an_empty_one() {
        String text = JobFile.text(JOB.withRecord(JobRecord.EMPTY), null);
        String without = text.substring(0, text.indexOf(",\n  \"record\"")) + "\n}\n";

        assertThat(opened(without, Samples.shop()).job().record()).isEqualTo(JobRecord.EMPTY);
    }

    @Test
    void the_canonical_plan_is_one_line_and_knows_nothing_of_the_record() {
        JobPlan plan = JOB.plan();

        assertThat(JobFile.canonical(plan))
                .startsWith("{\"title\": {\"part\": \"Bearing block\"")
                .doesNotContain("\n")
                .doesNotContain("ticks")
                .isEqualTo(JobFile.canonical(
                        opened(JobFile.text(JOB, null), Samples.shop()).job().plan()))
                .isNotEqualTo(JobFile.canonical(plan.withNumberOff(13)));
    }

    @Test
    void a_copy_that_equals_the_row_of_the_shop_is_silent() {
        assertThat(opened(JobFile.text(JOB, null), Samples.shop()).notes()).isEmpty();
    }

    @Test
    void a_row_that_the_shop_has_otherwise_is_noted_with_both_and_the_copy_is_kept() {
        ShopRow sharper = SampleShop.drill("drill-6.8", "6.9 mm");

        JobRead.Opened read = opened(JobFile.text(JOB, null), Samples.shop().with(List.of(sharper)));

        assertThat(read.job().plan().rows()).isEqualTo(JOB.plan().rows());
        assertThat(read.notes()).singleElement().satisfies(note -> {
            assertThat(note.slug()).isEqualTo("shop-row-changed");
            assertThat(note.copy().id()).isEqualTo("drill-6.8");
            assertThat(note.inShop()).isEqualTo(sharper);
            assertThat(note.differences())
                    .containsExactly(
                            new RowNote.Difference("name", "Drill 6.8 mm", "Drill 6.9 mm"),
                            new RowNote.Difference("diameter", "6.8 mm", "6.9 mm"),
                            new RowNote.Difference("shank", "6.8 mm", "6.9 mm"));
        });
    }

    @Test
    void a_row_that_the_shop_has_not_is_noted_as_missing() {
        List<ShopRow> others = Samples.shop().rows().stream()
                .filter(row -> !row.id().equals("vise-6in"))
                .toList();

        assertThat(opened(JobFile.text(JOB, null), Shop.of(others)).notes())
                .singleElement()
                .satisfies(note -> {
                    assertThat(note.slug()).isEqualTo("not-in-shop");
                    assertThat(note.copy()).isEqualTo(SampleShop.vise());
                    assertThat(note.inShop()).isNull();
                });
    }

    static JobRead.Opened opened(String text, Shop shop) {
        JobRead read = JobFile.read(text, shop);
        assertThat(read).isInstanceOf(JobRead.Opened.class);
        return (JobRead.Opened) read;
    }
}
