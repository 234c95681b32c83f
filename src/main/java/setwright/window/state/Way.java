package setwright.window.state;

/** The three ways of working on the one job. */
public enum Way {
    PLAN("Plan"),
    WALK_THROUGH("Walk through"),
    REVIEW("Review");

    private final String words;

    Way(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
