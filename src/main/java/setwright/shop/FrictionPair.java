package setwright.shop;

import setwright.quantity.Ratio;
import setwright.quantity.Typed;

/** Friction between two surfaces under clamp, as a band; {@code expected} is what the asked factor is judged with. */
public record FrictionPair(
        String id, String name, Typed<Ratio> pessimistic, Typed<Ratio> expected, Typed<Ratio> high, String source)
        implements ShopRow {
    @Override
    public Kind kind() {
        return Kind.FRICTION;
    }
}
