package setwright.quantity;

/**
 * A drill size that has a name.
 *
 * @param name as people write it, for instance {@code #7}, {@code F} or {@code 27/64 in}
 */
public record NamedSize(Series series, String name, Length size) {
    /** The three inch series. */
    public enum Series {
        NUMBER,
        LETTER,
        FRACTION
    }

    /** How much larger this size is than another length; negative where it is smaller. */
    public Length over(Length other) {
        return new Length(size.mm() - other.mm());
    }
}
