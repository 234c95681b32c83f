package setwright.shop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/** The rows of the shop folder as written, series expanded; nothing of the program takes part in the reading. */
final class PlainShop {
    static final Path FOLDER = Path.of("shared");

    private final Map<String, PlainRow> rows = new LinkedHashMap<>();

    static PlainShop read() {
        PlainShop shop = new PlainShop();
        for (Path file : ShopFilesTest.files()) {
            written(file).forEach(row -> shop.expand(row).forEach(shop::add));
        }
        return shop;
    }

    /** The rows of one file, series not expanded. */
    static List<PlainRow> written(Path file) {
        Map<?, ?> whole = JsonMapper.shared().readValue(file.toFile(), Map.class);
        List<PlainRow> rows = new ArrayList<>();
        for (Object row : (List<?>) whole.get("rows")) {
            rows.add(new PlainRow(keys((Map<?, ?>) row)));
        }
        return rows;
    }

    List<PlainRow> all() {
        return List.copyOf(rows.values());
    }

    List<PlainRow> ofKind(String kind) {
        return all().stream().filter(row -> row.kind().equals(kind)).toList();
    }

    PlainRow row(String id) {
        PlainRow row = rows.get(id);
        if (row == null) {
            throw new AssertionError("The shop has no row " + id);
        }
        return row;
    }

    private void add(PlainRow row) {
        if (rows.put(row.id(), row) != null) {
            throw new AssertionError("Two rows have the id " + row.id());
        }
    }

    private List<PlainRow> expand(PlainRow row) {
        if (!row.kind().equals("series")) {
            return List.of(row);
        }
        List<?> columns = (List<?>) row.value("columns");
        List<PlainRow> expanded = new ArrayList<>();
        for (Object cells : (List<?>) row.value("rows")) {
            expanded.add(one(row, columns, (List<?>) cells));
        }
        return expanded;
    }

    private static PlainRow one(PlainRow series, List<?> columns, List<?> cells) {
        Map<String, Object> keys = new LinkedHashMap<>();
        String id = series.id();
        String name = series.text("name");
        Map<String, Object> own = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            String place = "{" + columns.get(i) + "}";
            if (id.contains(place) || name.contains(place)) {
                id = id.replace(place, cells.get(i).toString());
                name = name.replace(place, cells.get(i).toString());
            } else {
                own.put(columns.get(i).toString(), cells.get(i));
            }
        }
        keys.put("kind", series.value("of"));
        keys.put("id", id);
        keys.put("name", name);
        keys.putAll(keys((Map<?, ?>) series.value("each")));
        keys.putAll(own);
        return new PlainRow(keys);
    }

    private static Map<String, Object> keys(Map<?, ?> map) {
        Map<String, Object> keys = new LinkedHashMap<>();
        map.forEach((key, value) -> keys.put(key.toString(), value));
        return keys;
    }
}
