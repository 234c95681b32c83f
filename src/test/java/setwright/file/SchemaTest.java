package setwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.cutting.LimitName;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.shape.WrittenNames;
import setwright.job.DrawnHolding;
import setwright.job.JobRecord;
import setwright.job.Operation;

class SchemaTest {
    private static final String MEANT =
            "where the records were meant to change, copy target/schemas to src/main/resources/setwright/file";

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @Test
    void the_packed_schemas_are_those_of_the_records_as_they_are_now() throws IOException {
        String job = written(Schema.JOB, Schema.job());
        String shop = written(Schema.SHOP, Schema.shop());
        assertThat(Schema.JOB.text()).as(MEANT).isEqualTo(job);
        assertThat(Schema.SHOP.text()).as(MEANT).isEqualTo(shop);
    }

    private static String written(Schema schema, String now) throws IOException {
        Path fresh = Files.createDirectories(Path.of("target", "schemas")).resolve(schema.resource());
        Files.writeString(fresh, now, UTF_8);
        return now;
    }

    @Test
    void a_job_as_it_is_written_fits_its_schema() {
        assertThat(errors(Schema.JOB, JobFile.text(Samples.bearingBlock(), Samples.drawnUp())))
                .isEmpty();
    }

    @Test
    void a_job_that_is_refused_for_its_shape_does_not_fit_either() {
        String text = JobFile.text(Samples.bearingBlock(), null);

        assertThat(errors(Schema.JOB, text.replace("stickOut", "stikOut"))).isNotEmpty();
        assertThat(errors(Schema.JOB, text.replace("\"depth\": \"1 mm\"", "\"depth\": 1")))
                .isNotEmpty();
        assertThat(errors(Schema.JOB, text.replace("\"kind\": \"grid\"", "\"kind\": \"gird\"")))
                .isNotEmpty();
        assertThat(errors(Schema.JOB, text.replace("\"version\": 1", "\"version\": 2")))
                .isNotEmpty();
        assertThat(errors(Schema.JOB, text.replace("\"front\"", "\"frond\""))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"machines", "cutters", "materials", "cutting-speeds"})
    void the_files_of_a_shop_fit_its_schema(String file) throws IOException {
        String text = resource("shop/" + file + ".json");

        assertThat(errors(Schema.SHOP, text)).isEmpty();
        assertThat(errors(Schema.SHOP, text.replace("setwright shop", "setwright job")))
                .isNotEmpty();
    }

    @Test
    void a_row_of_a_series_that_lacks_its_columns_does_not_fit() throws IOException {
        assertThat(errors(Schema.SHOP, resource("shop/cutters.json").replace("\"columns\"", "\"colums\"")))
                .isNotEmpty();
    }

    @Test
    void the_answer_of_a_check_has_every_key_and_names_from_closed_lists() throws IOException {
        String answer = resource("check-answer.json");

        assertThat(errors(Schema.CHECK, answer)).isEmpty();
        assertThat(errors(Schema.CHECK, answer.replace("\"thrust\": null, ", "")))
                .isNotEmpty();
        assertThat(errors(Schema.CHECK, answer.replace("\"governing\": \"spindle power\"", "\"governing\": \"luck\"")))
                .isNotEmpty();
        assertThat(errors(Schema.CHECK, answer.replace("\"governing\": \"spindle power\"", "\"governing\": null")))
                .isEmpty();
        assertThat(errors(Schema.CHECK, answer.replace("\"name\": \"spindle power\"", "\"name\": \"luck\"")))
                .isNotEmpty();
        assertThat(errors(Schema.CHECK, answer.replace("\"kind\": \"face\"", "\"kind\": \"turn\"")))
                .isNotEmpty();
    }

    @Test
    void what_a_check_answers_for_a_job_that_it_cannot_read_fits_too() {
        String answer =
                "{\"file\": \"a.json\", \"problems\": [{\"line\": 1, \"column\": 2, \"message\": \"Found x.\"}]}";

        assertThat(errors(Schema.CHECK, answer)).isEmpty();
        assertThat(errors(Schema.CHECK, answer.replace("\"line\": 1, ", ""))).isNotEmpty();
    }

    @Test
    void the_closed_lists_of_the_check_are_those_of_the_rooms() {
        assertThat(names("limit-name"))
                .isEqualTo(Stream.of(LimitName.values()).map(LimitName::words).toList());
        assertThat(names("kind")).isEqualTo(written(Operation.Kind.values()));
        assertThat(names("holding")).isEqualTo(written(DrawnHolding.Kind.values()));
        assertThat(Schema.CHECK.text())
                .contains(
                        "\"role\": {\"enum\": [\"" + String.join("\", \"", written(JobRecord.Role.values())) + "\"]}");
    }

    private static List<String> names(String definition) {
        Tree.JsonObject schema =
                (Tree.JsonObject) Json.read(Schema.CHECK.text()).tree().orElseThrow();
        Tree.JsonObject definitions = (Tree.JsonObject) schema.get("$defs").orElseThrow();
        Tree.JsonObject closed = (Tree.JsonObject) definitions.get(definition).orElseThrow();
        return ((Tree.JsonArray) closed.get("enum").orElseThrow())
                .items().stream().map(name -> ((Tree.Text) name).text()).toList();
    }

    private static List<String> written(Enum<?>[] constants) {
        return Stream.of(constants).map(WrittenNames::constant).toList();
    }

    static List<Error> errors(Schema schema, String text) {
        return REGISTRY.getSchema(schema.text()).validate(text, InputFormat.JSON);
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = SchemaTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), UTF_8);
        }
    }
}
