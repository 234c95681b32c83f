package setwright.quantity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the packed tables: comma-separated rows under one line of column names. A line that starts with hash and blank is
 * a remark; a row may start with a hash ({@code #4-40}). A cell in quotes may hold commas and doubled quotes.
 */
public final class CsvRows {
    private static final String REMARK = "# ";

    private CsvRows() {}

    /** One row: its cells under their column names, and the line it stands on. */
    public record Row(String table, int line, List<String> columns, List<String> cells) {
        public Row {
            columns = List.copyOf(columns);
            cells = List.copyOf(cells);
            if (cells.size() != columns.size()) {
                throw new IllegalArgumentException(table + ", line " + line + ": " + columns.size()
                        + " cells are wanted, not " + cells.size() + ".");
            }
        }

        public String text(String column) {
            int place = columns.indexOf(column);
            if (place < 0) {
                throw new IllegalArgumentException(table + ", line " + line + ": there is no column " + column + ".");
            }
            return cells.get(place);
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        public double number(String column) {
            try {
                return Double.parseDouble(text(column));
            } catch (NumberFormatException notANumber) {
                throw new IllegalArgumentException(
                        table + ", line " + line + ", column " + column + ": a number is wanted, not '" + text(column)
                                + "'.",
                        notANumber);
            }
        }
    }

    /** The rows of a table that is packed beside a class. */
    public static List<Row> beside(Class<?> owner, String table) {
        try (var stream = owner.getResourceAsStream(table)) {
            if (stream == null) {
                throw new IllegalArgumentException(
                        "The table " + table + " is not packed beside " + owner.getName() + ".");
            }
            var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return rows(table, reader.lines().toList());
        } catch (IOException unread) {
            throw new UncheckedIOException("The table " + table + " cannot be read.", unread);
        }
    }

    static List<Row> rows(String table, List<String> lines) {
        List<Row> rows = new ArrayList<>();
        List<String> columns = List.of();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isBlank() || line.startsWith(REMARK)) {
                continue;
            }
            List<String> cells = cells(line);
            if (columns.isEmpty()) {
                columns = cells;
            } else {
                rows.add(new Row(table, i + 1, columns, cells));
            }
        }
        return List.copyOf(rows);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
