package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Flats round a bar, all at the same distance from its axis; across is twice that distance. */
public final class FlatsOnRound {
    private static final Symbol FLATS = symbol("n", "flats", Unit.NONE, 3, 100);
    private static final Symbol ACROSS = symbol("s", "across the flats", Unit.MM, 1, 500);
    private static final Source GEOMETRY = Source.of("computed: geometry of a regular polygon in a circle");

    public static final Formula ROUND = new Formula(
            "D = s / cos(π / n)",
            symbol("D", "round for sharp corners", Unit.MM, 1, 1000),
            List.of(ACROSS, FLATS),
            v -> round(v[0], v[1]),
            GEOMETRY);

    public static final Formula DEPTH = new Formula(
            "t = (D - s) / 2",
            symbol("t", "depth of a flat", Unit.MM, 0, 500),
            List.of(symbol("D", "round", Unit.MM, 1, 1000), ACROSS),
            v -> (v[0] - v[1]) / 2,
            GEOMETRY);

    /** What is left from corner to corner of a flat that does not meet its neighbours, or as wide as they let it be. */
    public static final Formula WIDTH = new Formula(
            "w = √(D^2 - s^2)",
            symbol("w", "width of a flat", Unit.MM, 0, 1000),
            List.of(symbol("D", "round", Unit.MM, 501, 1000), ACROSS),
            v -> StrictMath.sqrt(v[0] * v[0] - v[1] * v[1]),
            GEOMETRY);

    /** Over a flat and the round on its other side, as an odd number is measured. */
    public static final Formula OVER_ROUND = new Formula(
            "m = (D + s) / 2",
            symbol("m", "over a flat and the far side", Unit.MM, 0, 1000),
            List.of(symbol("D", "round", Unit.MM, 1, 1000), ACROSS),
            v -> (v[0] + v[1]) / 2,
            GEOMETRY);

    private FlatsOnRound() {}

    /** Across the flats of the largest regular polygon in a round, whose corners are sharp. */
    public static double sharp(double round, double flats) {
        return round * StrictMath.cos(Math.PI / flats);
    }

    public static double round(double across, double flats) {
        return across / StrictMath.cos(Math.PI / flats);
    }
}
