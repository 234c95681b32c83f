package setwright.drawing;

/** The plots that a line of the card may have. */
public enum Plot {
    FORCE("Force on the cutter round the turn; thick: with the holder's run-out"),
    DEPTH_AND_SPEED("Depth against speed: below the line the cut is quiet"),
    QUANTITY("Time against quantity"),
    BUDGET("Error budget");

    private final String words;

    Plot(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
