package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import setwright.quantity.CsvRows;

/** A worked example from outside, as a row of a file that names its source. */
public record Example(String id, String inputs, double expected, String unit, double tolerance, String source) {
    /** All rows whose id starts so. */
    public static Stream<Example> startingWith(String file, String id) {
        List<Example> found =
                all(file).filter(example -> example.id.startsWith(id)).toList();
        assertThat(found).as(id).isNotEmpty();
        return found.stream();
    }

    public static Example of(String file, String id) {
        return all(file).filter(example -> example.id.equals(id)).findFirst().orElseThrow();
    }

    private static Stream<Example> all(String file) {
        return CsvRows.beside(Example.class, file).stream().map(Example::of);
    }

    private static Example of(CsvRows.Row row) {
        double expected = row.number("expected");
        return new Example(
                row.text("id"),
                row.text("inputs"),
                expected,
                row.text("unit"),
                tolerance(row.text("tolerance"), expected),
                row.text("source"));
    }

    private static double tolerance(String text, double expected) {
        double rounding = 1e-9 * Math.abs(expected);
        return rounding
                + (text.endsWith("%")
                        ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100 * expected
                        : Double.parseDouble(text));
    }

    /** The number after a key among the inputs. */
    public double input(String key) {
        Matcher found =
                Pattern.compile("(?:^|;)" + Pattern.quote(key) + "=(-?[0-9.]+)").matcher(inputs);
        assertThat(found.find()).as(key + " in " + inputs).isTrue();
        return Double.parseDouble(found.group(1));
    }

    /** The edges of the cones it was worked out with, from the end of its id. */
    public int edges() {
        return Integer.parseInt(id.substring(id.lastIndexOf("-k") + 2));
    }

    public void holdsFor(double actual) {
        assertThat(actual).as("%s (%s)", id, source).isBetween(expected - tolerance, expected + tolerance);
    }
}
