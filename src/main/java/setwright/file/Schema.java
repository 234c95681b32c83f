package setwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.shape.Definitions;
import setwright.file.shape.Shapes;
import setwright.shop.ShopRow;

/** The JSON Schemas of what the program reads and prints, as they are packed with it. */
public enum Schema {
    JOB,
    SHOP,
    /** What {@code check} answers; written by hand. */
    CHECK;

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    /** The name of the packed resource, beside this room's classes. */
    String resource() {
        return name().toLowerCase(Locale.ROOT) + ".schema.json";
    }

    public String text() {
        try (InputStream in = Schema.class.getResourceAsStream(resource())) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + resource() + ".");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(resource() + " was not read.", e);
        }
    }

    /** The schema of job files as the records have it now. */
    static String job() {
        Definitions definitions = new Definitions();
        Tree.JsonObject document =
                (Tree.JsonObject) Shapes.record(JobDocument.class).inline(definitions);
        return text("A job of Setwright", Envelope.JOB, document, definitions);
    }

    /** The schema of shop files as the records have it now: one schema for all of them. */
    static String shop() {
        Definitions definitions = new Definitions();
        Tree.JsonObject document =
                (Tree.JsonObject) Shapes.record(ShopDocument.class).inline(definitions);
        Tree rows = Json.object()
                .put("type", "array")
                .put("items", Json.object().put("anyOf", rowOrSeries(definitions)))
                .build();
        return text("A shop file of Setwright", Envelope.SHOP, property(document, "rows", rows), definitions);
    }

    private static Tree rowOrSeries(Definitions definitions) {
        return Json.array(List.of(Shapes.family(ShopRow.class).schema(definitions), Series.SHAPE.schema(definitions)));
    }

    private static String text(String title, Envelope envelope, Tree.JsonObject document, Definitions definitions) {
        Tree.JsonObject whole =
                Json.object().put("$schema", DIALECT).put("title", title).build();
        Tree.JsonObject fixed = property(
                property(document, "format", constant(Json.text(envelope.format()))),
                "version",
                constant(Json.number((long) envelope.newest())));
        for (Tree.Member member : fixed.members()) {
            whole = whole.with(member.key(), member.value());
        }
        return Json.text(whole.with("$defs", definitions.all()), Json.Layout.PRETTY);
    }

    private static Tree constant(Tree value) {
        return Json.object().put("const", value).build();
    }

    private static Tree.JsonObject property(Tree.JsonObject schema, String key, Tree value) {
        Tree.JsonObject properties = (Tree.JsonObject) schema.get("properties").orElseThrow();
        return schema.with("properties", properties.with(key, value));
    }
}
