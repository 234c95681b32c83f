package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A drill of which only the point is in, such as a spot drill: it cuts like a drill of the diameter that its cone has
 * opened so far, with the chisel edge of the whole one. Millimetres and radians.
 */
public final class ConeCut {
    /** The widest chisel edge over the diameter that the factors of {@link ChiselFactors} go to. */
    public static final double WIDEST_WEB = 0.4;

    private static final Source CONE = Source.of("computed: geometry of a cone");
    private static final Symbol DEPTH = symbol("t", "depth of the point", Unit.MM, 0.05, 30);
    private static final Symbol POINT = symbol("w", "point angle", Unit.DEG, 60, 150);

    public static final Formula OPENED = new Formula(
            "d = 2 t tan(w / 2)",
            symbol("d", "diameter opened", Unit.MM, 0, 250),
            List.of(DEPTH, POINT),
            a -> opened(a[0], a[1]),
            CONE);

    private ConeCut() {}

    public static double opened(double depth, double pointAngle) {
        return 2 * depth * StrictMath.tan(pointAngle / 2);
    }

    /** Chisel edge over what is opened; a cone that opens less than the chisel counts as at the end of the factors. */
    public static double webRatio(double webOfDrill, double drill, double opened) {
        return Math.min(WIDEST_WEB, webOfDrill * drill / opened);
    }
}
