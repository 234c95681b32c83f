package setwright.cutting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import setwright.quantity.Unit;

/**
 * A row of outside checks: what goes in and what a document or an independent computation says comes out.
 *
 * @param cells the row's cells by the names of the columns
 */
public record CheckRow(Map<String, String> cells) {
    private static final Map<String, Double> OTHER_UNITS =
            Map.of("", 1.0, "mm⁴", 1.0, "in⁴", 25.4 * 25.4 * 25.4 * 25.4);

    /** The rows of a CSV resource beside a test class. */
    public static List<CheckRow> of(Class<?> beside, String resource) {
        try (InputStream in = Objects.requireNonNull(beside.getResourceAsStream(resource), resource)) {
            List<List<String>> lines = lines(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            return lines.subList(1, lines.size()).stream()
                    .map(line -> row(lines.get(0), line))
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static CheckRow row(List<String> names, List<String> line) {
        if (line.size() != names.size()) {
            throw new IllegalArgumentException(
                    "The row " + line + " has " + line.size() + " cells, not " + names.size());
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < line.size(); i++) {
            cells.put(names.get(i), line.get(i));
        }
        return new CheckRow(cells);
    }

    private static List<List<String>> lines(String csv) {
        List<List<String>> lines = new ArrayList<>();
        List<String> line = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : csv.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\n')) {
                line.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    lines.add(line);
                    line = new ArrayList<>();
                }
            } else {
                cell.append(c);
            }
        }
        return lines;
    }

    public String cell(String name) {
        return Objects.requireNonNull(cells.get(name), name);
    }

    public double number(String name) {
        return Double.parseDouble(cell(name));
    }

    /** The inputs, {@code name=number unit} with semicolons between, in the units that the program computes in. */
    public Map<String, Double> inputs() {
        Map<String, Double> inputs = new LinkedHashMap<>();
        for (String input : cell("inputs").split("; ", -1)) {
            String[] sides = input.split("=", 2);
            String[] quantity = sides[1].split(" ", 2);
            inputs.put(sides[0], inside(Double.parseDouble(quantity[0]), quantity.length == 1 ? "" : quantity[1]));
        }
        return inputs;
    }

    public double expected() {
        return inside(number("expected"), cell("unit"));
    }

    /** A share of the expected value. */
    public double tolerance() {
        return Double.parseDouble(cell("tolerance").replace("%", "").strip()) / 100;
    }

    /** Whether the check was read in a document, as against computed by somebody else's arithmetic. */
    public boolean published() {
        return cell("trust").equals("published");
    }

    private static double inside(double number, String symbol) {
        for (Unit unit : Unit.values()) {
            if (!symbol.isEmpty() && unit.symbol().equals(symbol)) {
                return unit.toInside(number);
            }
        }
        return number * Objects.requireNonNull(OTHER_UNITS.get(symbol), symbol);
    }

    @Override
    public String toString() {
        return cells.values().stream().limit(2).toList() + " " + cells.get("trust") + ": " + cells.get("source");
    }
}
