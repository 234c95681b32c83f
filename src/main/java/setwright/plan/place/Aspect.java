package setwright.plan.place;

/** What of a feature has the tolerance. */
public enum Aspect {
    PLACE("place"),
    DIAMETER("diameter"),
    RADIUS("radius"),
    WIDTH("width"),
    LENGTH("length"),
    DEPTH("depth"),
    ACROSS("size across"),
    PARALLEL("parallel"),
    SQUARE("square"),
    COAXIAL("coaxial"),
    IN_LINE("in line"),
    POSITION("position"),
    DEPTH_BETWEEN("depth between"),
    ANGULAR("angular place");

    private final String words;

    Aspect(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** As part of an identity: {@code size-across}. */
    String slug() {
        return words.replace(' ', '-');
    }

    /** Whether it stands between two features. */
    public boolean relates() {
        return compareTo(PARALLEL) >= 0;
    }
}
