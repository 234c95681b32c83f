package setwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.Measure;
import setwright.quantity.UnitSystem;

/** Every figure asked with bare numbers, by metric and by inch hands. */
class InchTwinTest {
    /** It reads its numbers from a file, which is always metric. */
    private static final Set<String> OF_A_FILE = Set.of("hold-balance");

    static List<String> questions() {
        return BenchQuestions.all();
    }

    @Test
    void every_figure_has_a_question() {
        Set<String> asked = BenchQuestions.all().stream()
                .map(line -> line.split(" ")[0])
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all = Figures.all().stream().map(Figure::name).collect(Collectors.toCollection(TreeSet::new));
        all.removeAll(OF_A_FILE);
        assertThat(asked).containsExactlyInAnyOrderElementsOf(all);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void inch_hands_get_the_answer_of_their_metric_twins(String line) {
        var metric = BenchQuestions.ask(line, UnitSystem.METRIC);
        var inch = BenchQuestions.ask(inInches(Question.of(line), metric.figure()), UnitSystem.INCH);
        same(metric.answered().answers(), inch.answered().answers());
    }

    private static String inInches(Question question, Figure figure) {
        StringBuilder line = new StringBuilder(figure.name());
        question.typed().forEach((key, typed) -> {
            Measure measure = figure.inputs().stream()
                    .filter(input -> input.key().equals(key))
                    .findFirst()
                    .orElseThrow()
                    .measure();
            String twin = measure == null
                    ? typed
                    : Arrays.stream(typed.split(","))
                            .map(number -> inInches(measure, Double.parseDouble(number)))
                            .collect(Collectors.joining(","));
            line.append(' ').append(key).append('=').append(twin);
        });
        return line.toString();
    }

    private static String inInches(Measure measure, double number) {
        double inside = measure.unit(UnitSystem.METRIC).toInside(number);
        return new java.math.BigDecimal(measure.unit(UnitSystem.INCH).fromInside(inside))
                .round(new java.math.MathContext(15))
                .toPlainString();
    }

    private static void same(List<Answer> metric, List<Answer> inch) {
        assertThat(inch).hasSameSizeAs(metric);
        for (int i = 0; i < metric.size(); i++) {
            same(metric.get(i), inch.get(i));
        }
    }

    private static void same(Answer metric, Answer inch) {
        assertThat(inch.kind()).isEqualTo(metric.kind());
        assertThat(inch.name()).isEqualTo(metric.name());
        if (metric instanceof Answer.Number one && inch instanceof Answer.Number other) {
            assertThat(other.unit()).isEqualTo(one.unit());
            near(one.inside(), other.inside(), metric.name());
        } else if (metric instanceof Answer.Numbers one && inch instanceof Answer.Numbers other) {
            assertThat(other.inside()).hasSameSizeAs(one.inside());
            for (int i = 0; i < one.inside().size(); i++) {
                near(one.inside().get(i), other.inside().get(i), metric.name());
            }
        } else if (metric instanceof Answer.Rows one && inch instanceof Answer.Rows other) {
            assertThat(other.rows()).hasSameSizeAs(one.rows());
            for (int i = 0; i < one.rows().size(); i++) {
                same(one.rows().get(i), other.rows().get(i));
            }
        } else {
            assertThat(inch).isEqualTo(metric);
        }
    }

    private static void near(double one, double other, String name) {
        assertThat(other).as(name).isCloseTo(one, within(1e-9 * Math.max(1, Math.abs(one))));
    }
}
