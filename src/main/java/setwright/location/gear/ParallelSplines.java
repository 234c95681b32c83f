package setwright.location.gear;

import java.util.List;
import java.util.Optional;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;

/**
 * Splines with parallel sides, by count and fit, as shares of the large diameter of the fitting.
 *
 * @param fit permanent; slide without load; slide under load
 */
public record ParallelSplines(int count, Fit fit, double width, double depth, double minor) {
    public static final Source SOURCE =
            Source.of("from memory: parallel-side splines of 4, 6, 10 and 16, as old automobile practice has them");

    private static final List<ParallelSplines> LISTED =
            CsvRows.beside(ParallelSplines.class, "parallel-splines.csv").stream()
                    .map(ParallelSplines::of)
                    .toList();

    /** How the hub sits. */
    public enum Fit {
        PERMANENT,
        SLIDE,
        SLIDE_LOADED
    }

    public static List<ParallelSplines> listed() {
        return LISTED;
    }

    public static Optional<ParallelSplines> of(int count, Fit fit) {
        return LISTED.stream()
                .filter(one -> one.count() == count && one.fit() == fit)
                .findFirst();
    }

    private static ParallelSplines of(CsvRows.Row row) {
        return new ParallelSplines(
                (int) row.number("splines"),
                Fit.valueOf(row.text("fit").toUpperCase(java.util.Locale.ROOT).replace('-', '_')),
                row.number("width"),
                row.number("depth"),
                row.number("minor"));
    }
}
