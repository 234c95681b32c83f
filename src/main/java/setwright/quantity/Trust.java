package setwright.quantity;

/** How far a source carries: only {@link #PUBLISHED} is an outside check. */
public enum Trust {
    PUBLISHED(""),
    COMPUTED("computed"),
    FROM_MEMORY("from memory"),
    COMMON_PRACTICE("common practice");

    private final String prefix;

    Trust(String prefix) {
        this.prefix = prefix;
    }

    /** The words at the start of a source text that say so; empty for a published source. */
    public String prefix() {
        return prefix;
    }
}
