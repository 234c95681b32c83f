package setwright.quantity.fit;

import java.math.BigDecimal;
import java.util.List;
import setwright.quantity.CsvRows;

/** The packed tables of limits and grades: rows for a band of sizes, over the lower up to and including the upper end. */
final class FitTable {
    static final double SMALLEST = 1;

    private FitTable() {}

    static List<CsvRows.Row> read(String table) {
        return CsvRows.beside(FitTable.class, table);
    }

    /** Whether a size lies in a row's band; the first band takes its lower end too. */
    static boolean takes(CsvRows.Row row, double size) {
        double over = row.number("over_mm");
        return (size > over || size == SMALLEST && over == SMALLEST) && size <= row.number("to_mm");
    }

    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
