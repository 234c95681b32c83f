package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.file.json.Problem;
import setwright.shop.CuttingSpeed;
import setwright.shop.Drill;
import setwright.shop.Shop;
import setwright.shop.ShopRow;

class ShopFolderTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void copy_the_sample() throws IOException, URISyntaxException {
        Path sample = Path.of(ShopFolderTest.class.getResource("shop").toURI());
        for (Path file : Files.list(sample).toList()) {
            Files.copy(file, folder.resolve(file.getFileName()));
        }
    }

    @Test
    void rows_come_in_the_order_of_the_files_and_a_series_is_expanded() {
        assertThat(opened().rows())
                .extracting(ShopRow::id)
                .containsExactly(
                        "spot-drill-10",
                        "drill-hss-jobber-6.8",
                        "drill-hss-jobber-11.8",
                        "mild-steel",
                        "speed-mild-steel-drill");
        Drill drill = opened().row("drill-hss-jobber-6.8", Drill.class).orElseThrow();
        assertThat(drill.name()).isEqualTo("Drill 6.8 mm, jobber");
        assertThat(drill.diameter()).isEqualTo(SampleShop.mm("6.8 mm"));
        assertThat(drill.overallLength().inside()).isEqualTo(109);
        assertThat(drill.series()).isEqualTo(Drill.Series.JOBBER);
    }

    @Test
    void a_feed_may_be_written_per_turn() {
        CuttingSpeed speed =
                opened().row("speed-mild-steel-drill", CuttingSpeed.class).orElseThrow();

        assertThat(speed.feeds().get(1).feed().inside()).isEqualTo(0.2);
    }

    @Test
    void a_problem_in_a_series_stands_at_its_cell() throws IOException {
        edit("cutters.json", "\"94 mm\"", "\"94 kg\"");

        assertThat(refused()).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo("cutters.json/rows[1]/rows[1]/fluteLength");
            assertThat(problem.line()).isEqualTo(8);
            assertThat(problem.column()).isEqualTo(37);
        });
    }

    @Test
    void a_line_of_a_series_with_a_value_missing_or_a_column_nobody_knows_is_told() throws IOException {
        edit("cutters.json", "\"94 mm\", ", "");
        assertThat(refused())
                .containsExactly(new Problem(
                        8,
                        6,
                        "cutters.json/rows[1]/rows[1]",
                        "Found 4 values; accepted here: 5, one for each column."));

        edit(
                "cutters.json",
                "[\"11.8\", \"11.8 mm\", \"11.8 mm\", \"142 mm\"]",
                "[\"11.8\", \"1 mm\", \"1 mm\", \"4 mm\", \"5 mm\"]");
        edit("cutters.json", "\"shank\", \"fluteLength\"", "\"shank\", \"length\"");
        assertThat(refused()).extracting(Problem::path).contains("cutters.json/rows[1]/rows[0]/length");
    }

    @Test
    void a_series_without_its_blank_names_the_double_id() throws IOException {
        edit("cutters.json", "drill-hss-jobber-{d}", "drill-hss-jobber");

        assertThat(refused())
                .singleElement()
                .satisfies(
                        problem -> assertThat(problem.message())
                                .contains(
                                        "\"drill-hss-jobber\" is taken by cutters.json/rows[1]/rows[0]/id at line 7, column 6"));
    }

    @Test
    void a_row_in_the_wrong_file_two_rows_of_one_id_and_a_material_nobody_has_are_told_file_by_file()
            throws IOException {
        edit("holders.json", "[]", "[{\"kind\": \"drill\", \"id\": \"d\"}]");
        edit(
                "times.json",
                "[]",
                "[\n{\"kind\": \"time\", \"id\": \"mild-steel\", \"name\": \"x\", \"time\": \"1 min\", \"source\": \"x\"}]");
        edit("cutting-speeds.json", "\"material\": \"mild-steel\"", "\"material\": \"mild-stel\"");

        assertThat(refused())
                .extracting(Problem::path, Problem::line)
                .containsExactly(
                        tuple("holders.json/rows[0]/kind", 1),
                        tuple("cutting-speeds.json/rows[0]/material", 2),
                        tuple("times.json/rows[0]/id", 2));
    }

    @Test
    void a_file_that_is_missing_or_is_a_job_is_told_under_its_name() throws IOException {
        Files.delete(folder.resolve("vises.json"));
        Files.writeString(
                folder.resolve("times.json"), JobFile.text(Samples.bearingBlock(), null), StandardCharsets.UTF_8);

        assertThat(refused()).extracting(Problem::path).containsExactly("vises.json", "times.json/format");
    }

    @Test
    void a_folder_that_is_not_there_is_told() {
        assertThat(ShopFolder.read(folder.resolve("none")))
                .isInstanceOfSatisfying(
                        ShopRead.Refused.class,
                        refused -> assertThat(refused.problems().get(0).message())
                                .startsWith("There is no folder " + folder.resolve("none")));
    }

    @Test
    void the_shop_is_looked_for_where_it_was_asked_for_then_beside_the_job_then_where_one_works() throws IOException {
        Path job = Files.createDirectories(folder.resolve("jobs"));
        Path working = Files.createDirectories(folder.resolve("working"));
        ShopPlace place = new ShopPlace(null, null, job, working);
        assertThat(place.folder()).isEmpty();

        Path there = Files.createDirectories(working.resolve("shared"));
        assertThat(place.folder()).as("a folder without a shop").isEmpty();
        Files.copy(folder.resolve("machines.json"), there.resolve("machines.json"));
        assertThat(place.folder()).contains(there);
        assertThat(new ShopPlace(null, null, null, working).folder()).contains(there);

        Path beside = Files.createDirectories(job.resolve("shared"));
        Files.copy(folder.resolve("machines.json"), beside.resolve("machines.json"));
        assertThat(place.folder()).contains(beside);
        assertThat(new ShopPlace(null, folder, job, working).folder()).contains(folder);
        assertThat(new ShopPlace(Path.of("asked"), folder, job, working).folder())
                .contains(Path.of("asked"));
        assertThat(new ShopPlace(folder, null, job, working).read()).isInstanceOf(ShopRead.Opened.class);
    }

    private void edit(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to), StandardCharsets.UTF_8);
    }

    private Shop opened() {
        ShopRead read = ShopFolder.read(folder);
        assertThat(read).isInstanceOf(ShopRead.Opened.class);
        return ((ShopRead.Opened) read).shop();
    }

    private List<Problem> refused() {
        ShopRead read = ShopFolder.read(folder);
        assertThat(read).isInstanceOf(ShopRead.Refused.class);
        return ((ShopRead.Refused) read).problems();
    }
}
