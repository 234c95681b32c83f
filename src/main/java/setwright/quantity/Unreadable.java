package setwright.quantity;

/** A text that cannot be read as the quantity asked for; the message says what was found and what would be accepted. */
public final class Unreadable extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public Unreadable(String message) {
        super(message);
    }
}
