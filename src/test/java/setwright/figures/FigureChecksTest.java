package setwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.file.ShopFolder;
import setwright.file.ShopRead;
import setwright.quantity.CsvRows;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** Bench figures against published worked examples, each beside its source. */
class FigureChecksTest {
    private static final Shop SHOP = ((ShopRead.Opened) ShopFolder.packed()).shop();

    static Stream<CsvRows.Row> rows() {
        return CsvRows.beside(FigureChecksTest.class, "figure-checks.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_figure_answers_as_its_source_does(CsvRows.Row row) {
        Answer.Number answer = answer(row.text("question"), row.text("answer"));
        double found = unit(row.text("unit")).fromInside(answer.inside());
        double expected = row.number("expected");
        assertThat(found)
                .as("%s: %s", row.text("id"), row.text("source"))
                .isCloseTo(expected, within(Math.abs(expected) * row.number("tolerance")));
    }

    @Test
    void the_checks_cover_most_of_the_figures_that_answer_a_number() {
        assertThat(rows().map(row -> row.text("question").split(" ")[0])
                        .distinct()
                        .count())
                .isGreaterThan(18);
    }

    private static Answer.Number answer(String line, String name) {
        Question question = Question.of(line);
        Figure.Reply reply = Figures.required(question.figure()).ask(question, UnitSystem.METRIC, SHOP);
        return reply.answered().answers().stream()
                .filter(one -> one.name().equals(name))
                .map(Answer.Number.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Unit unit(String symbol) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
