package setwright.location.layout;

import java.util.ArrayList;
import java.util.List;
import setwright.location.Place;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * An arc cut by the edge of a cutter that is wound from place to place: the cutter stands tangent to the arc at every
 * place, and between two of them a ridge is left. Millimetres and radians, from the centre of the arc, angles from +x
 * anticlockwise.
 *
 * @param path radius on which the middle of the cutter stands
 * @param steps from the first place to the last
 */
public record SteppedArc(double radius, double path, double cutter, double start, double span, int steps) {
    public static final Procedure PLACES = new Procedure(
            "radius by steps",
            List.of(
                    "the middle of the cutter stands at r + d / 2 for a corner rounded from outside, at r - d / 2 inside",
                    "every place is worked out from the centre of the arc, none from the one before",
                    "the ridge lies half way between two places, where both cutters' edges meet"),
            Unit.MM,
            Source.of("computed: two equal circles about neighbouring places"));

    public static SteppedArc outside(double radius, double cutter, double start, double span, int steps) {
        return new SteppedArc(radius, radius + cutter / 2, cutter, start, span, steps);
    }

    /** @throws IllegalArgumentException where the cutter does not go into the arc */
    public static SteppedArc inside(double radius, double cutter, double start, double span, int steps) {
        if (cutter > 2 * radius) {
            throw new IllegalArgumentException("the cutter is larger than twice the radius; accepted: up to that.");
        }
        return new SteppedArc(radius, radius - cutter / 2, cutter, start, span, steps);
    }

    /** Where the middle of the cutter stands, one more than there are steps. */
    public List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double angle = start + span * i / steps;
            places.add(new Place(path * StrictMath.cos(angle), path * StrictMath.sin(angle)));
        }
        return List.copyOf(places);
    }

    /**
     * How high the ridge between two places stands over the arc.
     *
     * @throws IllegalArgumentException where neighbouring cuts do not meet
     */
    public double ridge() {
        double half = span / steps / 2;
        double across = path * StrictMath.sin(half);
        double square = cutter * cutter / 4 - across * across;
        if (square < 0 || Math.abs(half) > Math.PI / 2) {
            throw new IllegalArgumentException("the cuts do not meet from step to step; take more steps.");
        }
        double along = path * StrictMath.cos(half);
        double edge = StrictMath.sqrt(square);
        return path > radius ? along - edge - radius : radius - along - edge;
    }
}
