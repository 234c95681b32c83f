package setwright.shop;

import java.util.Map;

/** One shop row as written: key to text, number, list or map. */
record PlainRow(Map<String, Object> keys) {
    /** What one of a unit is in the first unit of its kind. */
    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("mm", 1.0),
            Map.entry("in", 25.4),
            Map.entry("m/min", 1.0),
            Map.entry("ft/min", 0.3048),
            Map.entry("kW", 1.0),
            Map.entry("hp", 0.7457),
            Map.entry("min", 1.0),
            Map.entry("kg", 1.0),
            Map.entry("kN", 1.0),
            Map.entry("N/mm2", 1.0),
            Map.entry("J/mm3", 1.0),
            Map.entry("GPa", 1.0),
            Map.entry("kg/m3", 1.0),
            Map.entry("", 1.0));

    String kind() {
        return text("kind");
    }

    String id() {
        return text("id");
    }

    @Override
    public String toString() {
        return id();
    }

    /** The value of a key; {@code x.travel} is the key {@code travel} inside {@code x}. */
    Object value(String key) {
        Object found = keys;
        for (String part : key.split("\\.")) {
            found = found instanceof Map<?, ?> map ? map.get(part) : null;
        }
        if (found == null) {
            throw new AssertionError(keys.get("id") + " has no " + key);
        }
        return found;
    }

    String text(String key) {
        return (String) value(key);
    }

    /** The number of a quantity in a unit of the asker's choice. */
    double in(String unit, String key) {
        return quantity(text(key), unit);
    }

    double mm(String key) {
        return in("mm", key);
    }

    /** Reads {@code 6.8 mm}, {@code 1-1/4 in}, {@code 3/8 in}, {@code #7} and {@code 0.21}. */
    static double quantity(String text, String unit) {
        if (text.startsWith("#")) {
            return gauge(text.substring(1)) * UNITS.get("in") / UNITS.get(unit);
        }
        int blank = text.indexOf(' ');
        String written = blank < 0 ? "" : text.substring(blank + 1);
        return number(blank < 0 ? text : text.substring(0, blank)) * UNITS.get(written) / UNITS.get(unit);
    }

    /** Reads {@code 38}, {@code 3/8} and {@code 1-3/8}. */
    static double number(String text) {
        if (!text.contains("/")) {
            return Double.parseDouble(text);
        }
        String[] parts = text.split("[-/]");
        int last = parts.length - 1;
        double fraction = Double.parseDouble(parts[last - 1]) / Double.parseDouble(parts[last]);
        return last == 2 ? Double.parseDouble(parts[0]) + fraction : fraction;
    }

    private static double gauge(String number) {
        return CsvTable.read("drill-gauge-sizes.csv").stream()
                .filter(row -> row.get("series").equals("number"))
                .filter(row -> row.get("size").equals(number))
                .mapToDouble(row -> Double.parseDouble(row.get("inch")))
                .findFirst()
                .orElseThrow();
    }
}
