package setwright.shop;

import setwright.quantity.Time;
import setwright.quantity.Typed;

/** A time that handwork takes: changing a tool, loading a part, finding an edge. */
public record HandTime(String id, String name, Typed<Time> time, String source) implements ShopRow {
    @Override
    public Kind kind() {
        return Kind.TIME;
    }
}
