package setwright.holding;

/** Which end of what is not known sharply a figure is worked out for. */
public enum Outlook {
    /** As it usually is. */
    EXPECTED("expected"),
    /** As it is on a bad day: a slippery face, a slack pull on the handle. */
    PESSIMISTIC("pessimistic");

    private final String word;

    Outlook(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
