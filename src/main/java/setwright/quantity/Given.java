package setwright.quantity;

/**
 * A number that a working starts from.
 *
 * @param name in the trade's words
 * @param inside the number in the unit that the program computes in
 * @param unit the unit in which it is printed
 * @param origin where it came from: a place in the job ({@code s1/o3/stickOut}), a shop row
 *     ({@code shop/mild-steel/kc11}), or words such as {@code typed here}; the window jumps there
 */
public record Given(String name, double inside, Unit unit, String origin) implements Value {
    public Given {
        Quantity.requireFinite(name, inside);
    }

    public static Given of(String name, double inside, Unit unit, String origin) {
        return new Given(name, inside, unit, origin);
    }
}
