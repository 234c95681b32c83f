package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * Holes evenly on a circle; millimetres and radians, angles from +x anticlockwise.
 *
 * @param start angle of the first hole
 * @param span angle from the first hole to the last; a full turn closes the circle, so that the last hole is one step
 *     before the first
 */
public record BoltCircle(int holes, double diameter, Place centre, double start, double span) {
    private static final double TURN = 2 * Math.PI;

    /** Straight distance between neighbours on a full circle. */
    public static final Formula CHORD = new Formula(
            "c = D sin(π / n)",
            symbol("c", "chord", Unit.MM, 0, 2000),
            List.of(symbol("D", "diameter of the circle", Unit.MM, 1, 2000), symbol("n", "holes", Unit.NONE, 2, 360)),
            v -> chord(v[0], v[1]),
            Source.of("chord table (shopswarf.orcon.net.nz/spacing.html); Guide to Machinery's Handbook, section 2"
                    + " (ja.scribd.com/document/382910956)"));

    /** Straight distance over several spaces: for checking with a caliper over pins. */
    public static final Formula SPACED_CHORD = new Formula(
            "c = D sin(π s / n)",
            symbol("c", "chord", Unit.MM, 0, 2000),
            List.of(
                    symbol("D", "diameter of the circle", Unit.MM, 1, 2000),
                    symbol("s", "spaces", Unit.NONE, 1, 30),
                    symbol("n", "holes", Unit.NONE, 31, 360)),
            v -> v[0] * StrictMath.sin(Math.PI * v[1] / v[2]),
            CHORD.source());

    public BoltCircle {
        if (holes < 1 || diameter <= 0) {
            throw new IllegalArgumentException(
                    "A bolt circle has holes and a diameter, not " + holes + " holes on " + diameter + " mm.");
        }
    }

    public static BoltCircle full(int holes, double diameter, Place centre, double start) {
        return new BoltCircle(holes, diameter, centre, start, TURN);
    }

    /** The holes in order; a negative span runs clockwise. */
    public List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < holes; i++) {
            double angle = start + i * step();
            places.add(new Place(
                    centre.x() + diameter / 2 * StrictMath.cos(angle),
                    centre.y() + diameter / 2 * StrictMath.sin(angle)));
        }
        return List.copyOf(places);
    }

    private double step() {
        boolean closed = Math.abs(span) >= TURN;
        return holes == 1 ? 0 : span / (closed ? holes : holes - 1);
    }

    public static double chord(double diameter, double holes) {
        return diameter * StrictMath.sin(Math.PI / holes);
    }
}
