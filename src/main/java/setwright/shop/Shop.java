package setwright.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All rows of one shop, in the order of their files; every id is unique. */
public final class Shop {
    private final Map<String, ShopRow> rows;
    private final List<ShopRow> all;
    private final Map<Class<?>, List<ShopRow>> byClass = new LinkedHashMap<>();

    private Shop(Map<String, ShopRow> rows) {
        this.rows = rows;
        all = List.copyOf(rows.values());
        rows.values()
                .forEach(row -> byClass.computeIfAbsent(row.getClass(), any -> new ArrayList<>())
                        .add(row));
    }

    /** @throws IllegalArgumentException where two rows have one id */
    public static Shop of(List<? extends ShopRow> rows) {
        Map<String, ShopRow> byId = new LinkedHashMap<>();
        for (ShopRow row : rows) {
            if (byId.put(row.id(), row) != null) {
                throw new IllegalArgumentException("Two shop rows have the id " + row.id() + "; rename one.");
            }
        }
        return new Shop(byId);
    }

    public List<ShopRow> rows() {
        return all;
    }

    public Optional<ShopRow> row(String id) {
        return Optional.ofNullable(rows.get(id));
    }

    /** The row of that id where it is of that kind. */
    public <T extends ShopRow> Optional<T> row(String id, Class<T> kind) {
        return row(id).filter(kind::isInstance).map(kind::cast);
    }

    /** Every row of a kind, in the order of the shop's files. */
    public <T extends ShopRow> List<T> all(Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (ShopRow row : byClass.getOrDefault(kind, kind.isInterface() ? rows() : List.of())) {
            if (kind.isInstance(row)) {
                found.add(kind.cast(row));
            }
        }
        return found;
    }

    /** This shop with other rows put in the place of those of the same id, or added at the end. */
    public Shop with(List<? extends ShopRow> others) {
        Map<String, ShopRow> byId = new LinkedHashMap<>(rows);
        others.forEach(row -> byId.put(row.id(), row));
        return new Shop(byId);
    }

    /** The material that is called so: by id, name or another name, whatever the case. */
    public Optional<Material> material(String called) {
        return all(Material.class).stream()
                .filter(material -> material.id().equalsIgnoreCase(called)
                        || material.name().equalsIgnoreCase(called)
                        || material.calledToo().stream().anyMatch(called::equalsIgnoreCase))
                .findFirst();
    }
}
