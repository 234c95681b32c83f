package setwright.location;

import setwright.quantity.Quantity;

/** A place in the plane, millimetres. */
public record Place(double x, double y) {
    public Place {
        Quantity.requireFinite("place", x);
        Quantity.requireFinite("place", y);
    }
}
