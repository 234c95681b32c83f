package setwright.quantity.thread;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.CsvRows;
import setwright.quantity.DrillNames;
import setwright.quantity.Length;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.quantity.thread.ScrewThread.Series;

/** Reads the packed thread table into rows, every size in millimetres. */
final class ThreadTable {
    private ThreadTable() {}

    static List<ThreadRow> read() {
        List<ThreadRow> rows = new ArrayList<>();
        for (CsvRows.Row row : CsvRows.beside(ThreadTable.class, "threads.csv")) {
            rows.add(read(row));
        }
        return List.copyOf(rows);
    }

    private static ThreadRow read(CsvRows.Row row) {
        boolean inch = row.text("unit").equals("in");
        Unit unit = inch ? Unit.IN : Unit.MM;
        double pitch = inch ? 25.4 / row.number("tpi") : row.number("pitch");
        String drill = row.text("tap_drill");
        double drillDiameter = isFraction(drill) ? fraction(drill) : row.number("tap_drill_d");
        double area = row.number("stress_area");
        return new ThreadRow(
                new ScrewThread(
                        row.text("thread"), series(row.text("series")), unit.toInside(row.number("major")), pitch),
                drill,
                unit.toInside(drillDiameter),
                unit.toInside(row.number("minor_min")),
                unit.toInside(row.number("minor_max")),
                inch ? Unit.IN2.toInside(area) : area,
                new ThreadRow.Clearance(hole(row, "clear_close"), hole(row, "clear_normal"), hole(row, "clear_loose")),
                Source.of(row.text("source")));
    }

    /** Metric holes stand as numbers, inch holes as drills. */
    private static double hole(CsvRows.Row row, String column) {
        if (!row.has(column)) {
            return Double.NaN;
        }
        String text = row.text(column);
        return row.text("unit").equals("mm")
                ? row.number(column)
                : DrillNames.published().size(text).map(Length::mm).orElseGet(() -> 25.4 * fraction(text));
    }

    private static Series series(String words) {
        for (Series series : Series.values()) {
            if (series.words().equals(words)) {
                return series;
            }
        }
        throw new IllegalArgumentException("There is no thread series called " + words + ".");
    }

    private static boolean isFraction(String drill) {
        return drill.contains("/");
    }

    /** {@code 27/64} or {@code 1-3/64} as a decimal: the table rounds it to four places. */
    static double fraction(String written) {
        int dash = written.indexOf('-');
        double whole = dash < 0 ? 0 : Double.parseDouble(written.substring(0, dash));
        int slash = written.indexOf('/');
        if (slash < 0) {
            return dash < 0 ? Double.parseDouble(written) : whole;
        }
        double over = Double.parseDouble(written.substring(dash + 1, slash));
        return whole + over / Double.parseDouble(written.substring(slash + 1));
    }
}
