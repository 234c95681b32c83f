package setwright.geometry;

/**
 * How far one of two turned bodies that touch must be lifted or lowered to come clear. In the upright plane of their
 * axes the height of overlap over a place is greatest above a corner of one of the two profiles.
 */
final class ProfileOverlap {
    private final Profile tool;
    private final Profile body;
    private final double apart;

    private ProfileOverlap(Profile tool, Profile body, double apart) {
        this.tool = tool;
        this.body = body;
        this.apart = apart;
    }

    static double inHeight(Profile tool, Profile body, double apart) {
        ProfileOverlap overlap = new ProfileOverlap(tool, body, apart);
        double from = apart - body.greatestRadius();
        double to = tool.greatestRadius();
        double[] corners = {
            from, to, tool.radiusLow(), tool.radiusHigh(), apart - body.radiusLow(), apart - body.radiusHigh()
        };
        double up = 0;
        double down = 0;
        for (double corner : corners) {
            double place = Math.max(from, Math.min(to, corner));
            up = Math.max(up, overlap.up(place));
            down = Math.max(down, overlap.down(place));
        }
        return Math.min(up, down);
    }

    private double up(double place) {
        return body.highestAsWideAs(apart - place) - tool.lowestAsWideAs(place);
    }

    private double down(double place) {
        return tool.highestAsWideAs(place) - body.lowestAsWideAs(apart - place);
    }
}
