package setwright.reach;

import setwright.quantity.Quantity;

/** A named height over the table top, millimetres. */
public record Level(String name, double height) {
    public Level {
        Quantity.requireFinite("height of " + name, height);
    }
}
