package setwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextSheetTest {
    @Test
    void a_table_that_is_too_wide_wraps_its_widest_column() {
        Block.Table table = new Block.Table(
                List.of(Block.Column.words("what"), Block.Column.figures("mm")),
                List.of(List.of("word ".repeat(40), "12.5"), List.of("short", "3")));

        List<String> lines = lines(table);
        assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(lines.stream()
                        .mapToLong(line -> line.split("word", -1).length - 1)
                        .sum())
                .isEqualTo(40);
        assertThat(lines.stream().filter(line -> line.endsWith("12.5") || line.endsWith(" 3")))
                .hasSize(2)
                .extracting(String::length)
                .containsOnly(100);
    }

    @Test
    void a_word_longer_than_a_line_is_cut() {
        assertThat(lines(Block.Words.of("x".repeat(250))))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void further_lines_of_a_pair_stand_under_the_first() {
        List<String> lines = lines(new Block.Pairs(List.of(new Block.Pair("zero", "far ".repeat(40)))));

        assertThat(lines).contains("  zero  " + "far ".repeat(23).strip());
        assertThat(lines).contains("        " + "far ".repeat(17).strip());
    }

    @Test
    void the_time_of_an_entry_stands_at_the_right_edge() {
        List<String> lines = lines(new Block.Entry("7", "Drill", "4.1 min", List.of("dry")));

        assertThat(lines)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("  7   Drill")
                        .endsWith("4.1 min")
                        .hasSize(100));
        assertThat(lines).contains("        dry");
    }

    private static List<String> lines(Block block) {
        return TextSheet.text(new SetUpSheet("t", List.of(block), "f")).lines().toList();
    }
}
