package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** What the spring of a boring bar leaves on a bore. */
public final class BarLeft {
    /** Radial over tangential force of a bar (eisc.com/?p=1190). */
    public static final Band RADIAL = new Band(0.25, 0.275, 0.30);

    public static final Formula LEFT = new Formula(
            "u = 0.275 F c",
            symbol("u", "left on the bore, on the radius", Unit.MM, 0, 1),
            List.of(
                    symbol("F", "tangential force on the bar", Unit.N, 1, 5000),
                    symbol("c", "millimetres that the bar gives for each newton", Unit.NONE, 0.000001, 0.01)),
            a -> left(a[0], a[1]),
            Source.of("eisc.com/?p=1190: the radial force of a boring bar is 0.25 to 0.30 of the tangential one and"
                    + " alone makes the size error"));

    /** A second cut at the same setting takes what the first left, and leaves the same share of it. */
    public static final Formula SPRUNG = new Formula(
            "s = u min(1, u / a)",
            symbol("s", "left on the bore after a spring pass", Unit.MM, 0, 1),
            List.of(
                    symbol("u", "left by the cut before", Unit.MM, 0, 0.1),
                    symbol("a", "depth of that cut", Unit.MM, 0.01, 2)),
            a -> sprung(a[0], a[1]),
            Source.of("computed: the force goes with the depth"));

    private BarLeft() {}

    /** Mm on the radius; the bore comes small by twice that. */
    public static double left(double tangential, double compliance) {
        return RADIAL.expected() * tangential * compliance;
    }

    /** Mm. */
    public static double sprung(double left, double depth) {
        return left * Math.min(1, left / depth);
    }
}
