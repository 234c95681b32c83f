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

    private FlatsOnRound() {}

    public static double round(double across, double flats) {
        return across / StrictMath.cos(Math.PI / flats);
    }
}
