package setwright.cutting;

/**
 * The force across the feed while the edge stands on the wall that the cut leaves, from its tip to the top of the cut.
 * The spring of the tool under it is what the wall keeps.
 *
 * @param least smallest force on the cutter along +y, N
 * @param mean over the height of the wall
 * @param greatest largest force on the cutter along +y, N
 */
public record WallForce(double least, double mean, double greatest) {
    /** The force farthest from none, with its sign. */
    public double farthest() {
        return greatest >= -least ? greatest : least;
    }
}
