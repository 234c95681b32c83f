package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** How long a stud has to be that holds a strap down, and how high the strap's heel is set; mm. */
public final class StudForms {
    /** Height of the nut and thickness of the washer in diameters of the stud. */
    private static final double NUT_AND_WASHER = 1.75;

    public static final Formula HEEL = new Formula(
            "h = p + w",
            symbol("h", "height of the heel", Unit.MM, 0, 500),
            List.of(
                    symbol("p", "packing under the work", Unit.MM, 0, 200),
                    symbol("w", "height of the work", Unit.MM, 1, 300)),
            v -> v[0] + v[1],
            Source.of("common practice: heel level with the work or slightly high"));
    public static final Formula LENGTH = new Formula(
            "L = s + h + t + 1.75 d + 2 P",
            symbol("L", "length of the stud", Unit.MM, 0, 1000),
            List.of(
                    symbol("s", "stud below the table top", Unit.MM, 1, 60),
                    symbol("h", "height of the heel", Unit.MM, 0, 500),
                    symbol("t", "thickness of the strap", Unit.MM, 1, 60),
                    symbol("d", "diameter of the stud", Unit.MM, 5, 30),
                    symbol("P", "pitch", Unit.MM, 0.5, 4)),
            v -> v[0] + v[1] + v[2] + NUT_AND_WASHER * v[3] + 2 * v[4],
            Source.of(
                    "common practice: washer of a quarter diameter, nut of 1.5 diameters (DIN 6330), two threads over it"));

    private StudForms() {}
}
