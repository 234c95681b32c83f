package setwright.drawing;

/**
 * What to draw, and how far the tool was wound.
 *
 * @param operation id; empty: the part as it is put in, without a tool
 * @param wind along the path, from 0 to 1
 */
public record Place(String setUp, String operation, double wind) {
    public Place(String setUp) {
        this(setUp, "", 0);
    }
}
