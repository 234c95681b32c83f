package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvRowsTest {
    @Test
    void a_row_may_start_with_a_hash_and_a_remark_is_passed_over() {
        var rows = CsvRows.rows("t.csv", List.of("# source: none", "thread,tpi", "#4-40,40", "", "# 4", "1/4-20,20"));

        assertThat(rows).extracting(row -> row.text("thread")).containsExactly("#4-40", "1/4-20");
        assertThat(rows.get(1).number("tpi")).isEqualTo(20);
        assertThat(rows.get(1).line()).isEqualTo(6);
    }

    @Test
    void a_quoted_cell_holds_commas_and_quotes() {
        var rows = CsvRows.rows("t.csv", List.of("a,b,c", "\"one, two\",\"1/2\"\" drill\","));

        assertThat(rows.get(0).text("a")).isEqualTo("one, two");
        assertThat(rows.get(0).text("b")).isEqualTo("1/2\" drill");
        assertThat(rows.get(0).has("c")).isFalse();
    }

    @Test
    void what_is_wrong_is_named_with_table_and_line() {
        assertThatThrownBy(() -> CsvRows.rows("t.csv", List.of("a,b", "1,2", "1")))
                .hasMessage("t.csv, line 3: 2 cells are wanted, not 1.");
        var row = CsvRows.rows("t.csv", List.of("a", "wide")).get(0);
        assertThatThrownBy(() -> row.number("a"))
                .hasMessage("t.csv, line 2, column a: a number is wanted, not 'wide'.");
        assertThatThrownBy(() -> row.text("b")).hasMessage("t.csv, line 2: there is no column b.");
        assertThatThrownBy(() -> CsvRows.beside(CsvRowsTest.class, "none.csv"))
                .hasMessageContaining("none.csv is not packed");
    }
}
