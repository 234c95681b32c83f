package setwright.quantity;

/**
 * Where a number or a rule comes from. The text is what is shown; it starts with {@code from memory}, {@code common
 * practice} or {@code computed} where no document was read.
 */
public record Source(String text) {
    public Source {
        if (text.isBlank()) {
            throw new IllegalArgumentException("A source needs words: a document, common practice, or from memory.");
        }
    }

    public static Source of(String text) {
        return new Source(text);
    }

    public Trust trust() {
        for (Trust trust : Trust.values()) {
            if (!trust.prefix().isEmpty() && text.startsWith(trust.prefix())) {
                return trust;
            }
        }
        return Trust.PUBLISHED;
    }
}
