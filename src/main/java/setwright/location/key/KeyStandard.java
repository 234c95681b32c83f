package setwright.location.key;

import java.util.List;
import java.util.Optional;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** The standards of parallel keys. Both say depth and mean another thing. */
public enum KeyStandard {
    /** From the crown of the shaft. */
    DIN("key-din6885-1.csv", Unit.MM),
    /** From the edge of the seat, at its side. */
    ASME("key-b17-1.csv", Unit.IN);

    private final List<KeyRow> rows;

    KeyStandard(String table, Unit unit) {
        rows = CsvRows.beside(KeyStandard.class, table).stream()
                .map(row -> row(row, unit))
                .toList();
    }

    public List<KeyRow> rows() {
        return rows;
    }

    public Optional<KeyRow> key(double shaft) {
        return rows.stream()
                .filter(row -> shaft > row.over() * (1 + 1e-9) && shaft <= row.to() * (1 + 1e-9))
                .findFirst();
    }

    private static KeyRow row(CsvRows.Row row, Unit unit) {
        double height = unit.toInside(row.number("height"));
        boolean crown = row.columns().contains("t1");
        return new KeyRow(
                unit.toInside(row.number("d_over")),
                unit.toInside(row.number("d_to")),
                unit.toInside(row.number("width")),
                height,
                crown ? unit.toInside(row.number("t1")) : height / 2,
                Source.of(row.text("source")));
    }
}
