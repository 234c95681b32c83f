package setwright.location.budget;

import setwright.location.Contributor;
import setwright.quantity.Source;

/** How a zero is found, and how well; half-widths in millimetres along each axis. */
public enum DatumWay {
    EDGE_FINDER("edge finding", 0.0127, "finding the edges twice from the same side"),
    /** Two edges, of which the mean is taken: √2 better than one. */
    BETWEEN_EDGES("the middle between edges", 0.009, "finding all edges twice"),
    BORE_INDICATED("sweeping the bore", 0.005, "an indicator of 0.002 mm"),
    /** Found once for the batch; every part then comes to jaw and stop. */
    JAW_AND_STOP("jaw and stop found once", 0.0127, "indicating jaw and stop"),
    SCRIBED_LINES("scribed lines", 0.15, "finding the edges instead"),
    DEVICE_CENTRE("sweeping the middle of the device", 0.01, "an indicator of 0.002 mm");

    private static final Source COMMON = Source.of("common practice");

    private final String words;
    private final double halfWidth;
    private final String halvedBy;

    DatumWay(String words, double halfWidth, String halvedBy) {
        this.words = words;
        this.halfWidth = halfWidth;
        this.halvedBy = halvedBy;
    }

    public double halfWidth() {
        return halfWidth;
    }

    public Contributor contributor() {
        return Contributor.eachAxis(words, halfWidth, COMMON).halvedBy(halvedBy);
    }
}
