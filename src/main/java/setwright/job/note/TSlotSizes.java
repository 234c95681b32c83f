package setwright.job.note;

import java.math.BigDecimal;
import setwright.quantity.CsvRows;

/** The least sizes of T-slots by their neck, as published (see the source column of the table). */
final class TSlotSizes {
    private static final double SAME_MM = 1e-6;

    private TSlotSizes() {}

    /** Depth, head width and head height of the slot of that neck, joined by x; empty where the table has none. */
    static String behindNeck(double neck) {
        return CsvRows.beside(TSlotSizes.class, "t-slots.csv").stream()
                .filter(row -> Math.abs(row.number("neck") - neck) < SAME_MM)
                .findFirst()
                .map(row -> millimetres(row, "depth") + " x " + millimetres(row, "head_width") + " x "
                        + millimetres(row, "head_height"))
                .orElse("");
    }

    private static String millimetres(CsvRows.Row row, String column) {
        return new BigDecimal(row.text(column)).toPlainString() + " mm";
    }
}
