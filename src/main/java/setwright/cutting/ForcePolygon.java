package setwright.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The force in the plane of the table over one full turn, as a line that closes: for a plot.
 *
 * @param moments by angle, the last a full turn after the first and with the same force
 */
public record ForcePolygon(List<TurnPoint> moments) {
    private static final int MOMENTS = 360;

    public ForcePolygon {
        moments = List.copyOf(moments);
        if (moments.size() < 2
                || !moments.get(0)
                        .force()
                        .equals(moments.get(moments.size() - 1).force())) {
            throw new IllegalArgumentException("A force polygon ends where it began.");
        }
    }

    /** Every degree of the turn, and the moment of the largest force. */
    public static ForcePolygon of(MillingForce turning) {
        List<TurnPoint> found = new ArrayList<>();
        TurnPoint largest = turning.largest();
        for (int i = 0; i < MOMENTS; i++) {
            double angle = 2 * Math.PI * i / MOMENTS;
            double next = 2 * Math.PI * (i + 1) / MOMENTS;
            found.add(new TurnPoint(angle, turning.at(angle)));
            if (largest.angle() > angle && largest.angle() < next) {
                found.add(largest);
            }
        }
        found.add(new TurnPoint(2 * Math.PI, found.get(0).force()));
        return new ForcePolygon(found);
    }

    /** The largest force in the plane of the table, N. */
    public double largest() {
        return moments.stream()
                .mapToDouble(moment -> moment.force().resultant())
                .max()
                .orElse(0);
    }
}
