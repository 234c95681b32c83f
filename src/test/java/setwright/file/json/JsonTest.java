package setwright.file.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.Rounds;
import setwright.file.json.Json.Layout;

class JsonTest {
    @Test
    void an_object_keeps_the_order_in_which_it_was_built() {
        Tree tree = Json.object()
                .put("job", "Block")
                .put("speed", 1115)
                .put("stickOut", 38.0)
                .put("open", true)
                .put("thrust", (Double) null)
                .put("note", (String) null)
                .put("steps", Json.texts(List.of("a", "b")))
                .put("factor", Json.object().put("expected", 5.3))
                .putNull("accepted")
                .build();

        assertThat(Json.text(tree, Layout.ONE_LINE))
                .isEqualTo(
                        "{\"job\": \"Block\", \"speed\": 1115, \"stickOut\": 38.0, \"open\": true, \"thrust\": null,"
                                + " \"note\": null, \"steps\": [\"a\", \"b\"], \"factor\": {\"expected\": 5.3}, \"accepted\": null}");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void what_is_not_finite_is_refused(double number) {
        assertThatThrownBy(() -> Json.object().put("power", number))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("finite");
    }

    @Test
    void a_key_put_twice_is_refused() {
        assertThatThrownBy(() -> Json.object().put("a", 1).put("a", 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("twice");
    }

    @Test
    void doubles_come_back_to_the_last_bit() {
        Rounds.each(103, (random, round) -> {
            double number = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(number)) {
                String text = Json.text(Json.number(number), Layout.ONE_LINE);
                Tree.Numeral read = (Tree.Numeral)
                        Json.read("[" + text + "]").tree().map(JsonTest::first).orElseThrow();
                assertThat(read.value()).isEqualTo(number + 0.0);
            }
        });
    }

    @Test
    void any_text_comes_back_letter_by_letter() {
        Rounds.each(104, (random, round) -> {
            String text = IntStream.range(0, random.nextInt(1, 20))
                    .mapToObj(i -> String.valueOf((char) random.nextInt(random.nextBoolean() ? 0x80 : 0x10000)))
                    .collect(Collectors.joining());
            String written = Json.text(Json.texts(List.of(text)), Layout.ONE_LINE);
            assertThat(Json.read(written).tree().map(JsonTest::first))
                    .hasValueSatisfying(
                            read -> assertThat(((Tree.Text) read).text()).isEqualTo(text));
            assertThat(new String(written.getBytes(UTF_8), UTF_8)).isEqualTo(written);
        });
    }

    @Test
    void pretty_breaks_lines_only_where_a_thing_is_long_or_deep() {
        String text = "{\n"
                + "  \"short\": {\"a\": 1, \"b\": [1, 2]},\n"
                + "  \"none\": [],\n"
                + "  \"deep\": [\n"
                + "    {\n"
                + "      \"a\": [{\"b\": 1}],\n"
                + "      \"c\": {}\n"
                + "    }\n"
                + "  ]\n"
                + "}\n";

        assertThat(Json.text(Json.read(text).tree().orElseThrow(), Layout.PRETTY))
                .isEqualTo(text);
    }

    @Test
    void every_value_and_key_remembers_where_it_stood() {
        Tree.JsonObject tree = (Tree.JsonObject) Json.read("{\n  \"a\": [1,\n \"two\"],\r\n\t\"b\": {}\n}")
                .tree()
                .orElseThrow();

        assertThat(tree.at()).isEqualTo(new Place(1, 1));
        assertThat(tree.member("a").orElseThrow().at()).isEqualTo(new Place(2, 3));
        Tree.JsonArray list = (Tree.JsonArray) tree.get("a").orElseThrow();
        assertThat(list.at()).isEqualTo(new Place(2, 8));
        assertThat(list.items()).extracting(Tree::at).containsExactly(new Place(2, 9), new Place(3, 2));
        assertThat(tree.member("b").orElseThrow().at()).isEqualTo(new Place(4, 2));
        assertThat(tree.get("b").orElseThrow().at()).isEqualTo(new Place(4, 7));
    }

    @Test
    void every_double_key_is_told_with_both_places_and_reading_goes_on() {
        TreeRead read = Json.read("{\"a\": {\"b\": 1, \"b\": 2}, \"c\": 3, \"a\": 4, \"a\": 5}");

        assertThat(read.tree()).isPresent();
        assertThat(read.problems())
                .extracting(Problem::column, Problem::path)
                .containsExactly(tuple(16, "a/b"), tuple(33, "a"), tuple(41, "a"));
        assertThat(read.problems().get(2).message()).contains("first at line 1, column 2");
    }

    @Test
    void limits_are_told_as_such() {
        assertThat(only("{\"a\": " + "[".repeat(70))).contains("deeper than 60");
        assertThat(only("[" + "1".repeat(200) + "]")).contains("more than 100 digits");
        assertThat(only("[\"" + "a".repeat(300_000) + "\"]")).contains("longer than 200000 characters");
        assertThat(only("{\"" + "a".repeat(60_000) + "\": 1}")).contains("longer than 1000 characters");
        assertThat(only("[" + "1,".repeat(1_000_000) + "1]")).contains("more than 1000000 keys");
    }

    private static String only(String text) {
        TreeRead read = Json.read(text);
        assertThat(read.tree()).isEmpty();
        assertThat(read.problems()).hasSize(1);
        return read.problems().get(0).message();
    }

    private static Tree first(Tree array) {
        return ((Tree.JsonArray) array).items().get(0);
    }
}
