package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A strap as a lever, with F the force of its stud in N, a from where it touches the work to the stud and b from the stud
 * to the heel, both level, in mm.
 */
public final class StrapForms {
    private static final Source LEVER =
            Source.of("Jig-and-fixture lecture note: the nut's force is shared inversely as the distances;"
                    + " Milling p. 195, http://what-when-how.com/Tutorial/topic-1455eprah/Milling-195.html");
    private static final Symbol STUD = symbol("F", "force of the stud", Unit.N, 0, 1e6);
    private static final Symbol TO_WORK = symbol("a", "work to stud", Unit.MM, 1, 500);
    private static final Symbol TO_HEEL = symbol("b", "stud to heel", Unit.MM, 1, 500);

    /** What the strap presses on the work with. */
    public static final Formula ON_WORK = new Formula(
            "W = F b / (a + b)",
            symbol("W", "force on the work", Unit.N, 0, 1e6),
            List.of(STUD, TO_WORK, TO_HEEL),
            a -> onWork(a[0], a[1], a[2]),
            LEVER);

    /** What it presses on its heel with. */
    public static final Formula ON_HEEL = new Formula(
            "H = F a / (a + b)",
            symbol("H", "force on the heel", Unit.N, 0, 1e6),
            List.of(STUD, TO_WORK, TO_HEEL),
            a -> onHeel(a[0], a[1], a[2]),
            LEVER);

    private StrapForms() {}

    public static double onWork(double stud, double toWork, double toHeel) {
        return stud * toHeel / (toWork + toHeel);
    }

    public static double onHeel(double stud, double toWork, double toHeel) {
        return stud * toWork / (toWork + toHeel);
    }
}
