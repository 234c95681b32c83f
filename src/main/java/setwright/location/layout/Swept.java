package setwright.location.layout;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** An indicator in the spindle, swept round: where the middle lies, from readings on opposite sides; millimetres. */
public final class Swept {
    private static final Source COMMON = Source.of("computed: half the difference of opposite readings");
    private static final Symbol LESSER = symbol("l", "reading on the left or front", Unit.MM, -5, 5);
    private static final Symbol GREATER = symbol("r", "reading on the right or back", Unit.MM, -5, 5);
    private static final Symbol MOVE = symbol("m", "move of the spindle to the right or back", Unit.MM, -5, 5);

    /** In a bore a greater reading says that the wall is nearer: away from it. */
    public static final Formula BORE =
            new Formula("m = (l - r) / 2", MOVE, List.of(LESSER, GREATER), v -> (v[0] - v[1]) / 2, COMMON);

    /** Round a boss or a bar a greater reading says that more of it stands on that side: towards it. */
    public static final Formula BOSS =
            new Formula("m = (r - l) / 2", MOVE, List.of(LESSER, GREATER), v -> (v[1] - v[0]) / 2, COMMON);

    private Swept() {}
}
