package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * What a nut does to the lips of a T-slot. F the pull in N, L the length of the nut, t the thickness of the lip, b the
 * width of the nut, a the width of the slot, all mm. The load is not counted to spread beyond the nut.
 */
public final class SlotForms {
    private static final Symbol PULL = symbol("F", "pull", Unit.N, 0, 2e5);
    private static final Symbol NUT = symbol("L", "length of the nut", Unit.MM, 5, 100);
    private static final Source STATICS = Source.of("computed: both lips over the length of the nut, no spread");

    public static final Formula SHEAR = new Formula(
            "τ = F / (2 L t)",
            symbol("τ", "shear in the lips", Unit.N_PER_MM2, 0, 2000),
            List.of(PULL, NUT, symbol("t", "thickness of the lip", Unit.MM, 3, 60)),
            a -> shear(a[0], a[1], a[2]),
            STATICS);

    public static final Formula BEARING = new Formula(
            "p = F / (L (b - a))",
            symbol("p", "pressure under the lips", Unit.N_PER_MM2, 0, 1e5),
            List.of(
                    PULL,
                    NUT,
                    symbol("b", "width of the nut", Unit.MM, 31, 60),
                    symbol("a", "width of the slot", Unit.MM, 5, 30)),
            a -> bearing(a[0], a[1], a[2], a[3]),
            STATICS);

    private SlotForms() {}

    public static double shear(double pull, double nutLength, double lip) {
        return pull / (2 * nutLength * lip);
    }

    public static double bearing(double pull, double nutLength, double nutWidth, double slotWidth) {
        return pull / (nutLength * (nutWidth - slotWidth));
    }
}
