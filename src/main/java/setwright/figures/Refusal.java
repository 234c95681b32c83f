package setwright.figures;

/** A question that cannot be answered as it stands; the message names the input and what would be accepted. */
public final class Refusal extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public Refusal(String message) {
        super(message);
    }

    /** A refusal of one input. */
    static Refusal of(String key, String message) {
        return new Refusal(key + ": " + message);
    }
}
