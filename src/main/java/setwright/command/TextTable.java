package setwright.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Cells under their headings, each column as wide as it needs. A heading that starts with {@code >} sets its column flush
 * right; a column whose heading starts with {@code ~} is cut where the line would else pass 100 columns.
 */
final class TextTable {
    private static final String GAP = "  ";
    private static final int LEAST = 8;

    private final String marks;
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... headings) {
        marks = Arrays.stream(headings).map(TextTable::mark).collect(Collectors.joining());
        rows.add(Arrays.stream(headings)
                .map(heading -> mark(heading).isBlank() ? heading : heading.substring(1))
                .toList());
    }

    private static String mark(String heading) {
        return heading.startsWith(">") || heading.startsWith("~") ? heading.substring(0, 1) : " ";
    }

    TextTable row(String... cells) {
        return row(List.of(cells));
    }

    TextTable row(List<String> cells) {
        rows.add(List.copyOf(cells));
        return this;
    }

    /** The lines, each behind the indent; columns without a cell are left out. */
    String text(String indent) {
        int[] widths = widths(Wrapped.COLUMNS - indent.length());
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(indent);
            String gap = "";
            for (int column = 0; column < row.size(); column++) {
                if (widths[column] > 0) {
                    line.append(gap).append(padded(row.get(column), widths[column], marks.charAt(column) == '>'));
                    gap = GAP;
                }
            }
            text.append(line.toString().stripTrailing()).append("\n");
        }
        return text.toString();
    }

    private int[] widths(int room) {
        int[] widths = new int[marks.length()];
        for (int column = 0; column < widths.length; column++) {
            widths[column] = width(column);
        }
        for (int widest = widest(widths); widest >= 0 && total(widths) > room; widest = widest(widths)) {
            widths[widest]--;
        }
        return widths;
    }

    /** The widest column that may be cut; below 0 where there is none any more. */
    private int widest(int[] widths) {
        int widest = -1;
        for (int column = 0; column < widths.length; column++) {
            boolean may = marks.charAt(column) == '~' && widths[column] > LEAST;
            if (may && (widest < 0 || widths[column] > widths[widest])) {
                widest = column;
            }
        }
        return widest;
    }

    private static int total(int[] widths) {
        int total = -GAP.length();
        for (int width : widths) {
            total += width == 0 ? 0 : width + GAP.length();
        }
        return total;
    }

    private int width(int column) {
        boolean empty = rows.stream().skip(1).allMatch(row -> row.get(column).isEmpty());
        return empty
                ? 0
                : rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }

    private static String padded(String cell, int width, boolean right) {
        String fit = length(cell) <= width ? cell : cell.substring(0, width - 3) + "...";
        String blanks = " ".repeat(width - length(fit));
        return right ? blanks + fit : fit + blanks;
    }
}
