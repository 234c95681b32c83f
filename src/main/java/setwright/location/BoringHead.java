package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** The dial of a boring head; millimetres. A head whose dial reads the radius bores twice what it says. */
public final class BoringHead {
    private static final Source COMPUTED = Source.of("computed: the bar stands at half the diameter");
    private static final Symbol FROM = symbol("d", "bore as it measures", Unit.MM, 1, 50);
    private static final Symbol TO = symbol("D", "bore that is wanted", Unit.MM, 51, 200);
    private static final Symbol DIVISION = symbol("g", "division of the dial", Unit.MM, 0.001, 0.1);
    private static final Symbol COUNT = symbol("n", "divisions", Unit.NONE, 0, 200_000);

    public static final Formula BY_DIAMETER =
            new Formula("n = (D - d) / g", COUNT, List.of(TO, FROM, DIVISION), v -> (v[0] - v[1]) / v[2], COMPUTED);
    public static final Formula BY_RADIUS = new Formula(
            "n = (D - d) / (2 g)", COUNT, List.of(TO, FROM, DIVISION), v -> (v[0] - v[1]) / (2 * v[2]), COMPUTED);

    private BoringHead() {}
}
