package setwright.command;

import java.util.List;

/** How a command ends. */
public enum Exit {
    /** Nothing to say against it. */
    CLEAN(0),
    /** Bad input, or no display. */
    UNREADABLE(2),
    /** A stop that nobody accepted. */
    STOPS(1),
    /** Stops, all accepted by the lead. */
    ACCEPTED(3);

    /** Several jobs end with the first of these that one of them has. */
    private static final List<Exit> WORST_FIRST = List.of(UNREADABLE, STOPS, ACCEPTED, CLEAN);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    public int code() {
        return code;
    }

    static Exit worst(List<Exit> exits) {
        return WORST_FIRST.stream().filter(exits::contains).findFirst().orElse(CLEAN);
    }
}
