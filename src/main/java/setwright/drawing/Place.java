package setwright.drawing;

/**
 * What to draw, and how far the tool was wound.
 *
 * @param operation id; empty: the part as it is put in, without a tool; {@link #FINISHED}: as it leaves the set-up
 * @param wind along the path, from 0 to 1
 */
public record Place(String setUp, String operation, double wind) {
    /** Written in place of an operation: all of them are done. */
    public static final String FINISHED = "finished";

    boolean isFinished() {
        return operation.equals(FINISHED);
    }

    public Place(String setUp) {
        this(setUp, "", 0);
    }
}
