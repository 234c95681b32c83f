package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** How a part gives to what clamps it: shorter between two jaws, bowed under a strap between two supports; mm and N. */
public final class Squeezed {
    private static final Source TEXTBOOKS = Source.of("from memory: textbooks on strength of materials");
    private static final Symbol FORCE = symbol("F", "force of the clamp", Unit.N, 1, 50000);
    private static final Symbol MODULUS = symbol("E", "modulus of elasticity", Unit.N_PER_MM2, 30000, 250000);

    public static final Formula SHORTER = new Formula(
            "δ = F L / (A E)",
            symbol("δ", "how much shorter", Unit.MM, 0, 5),
            List.of(
                    FORCE,
                    symbol("L", "length between the faces", Unit.MM, 1, 1000),
                    symbol("A", "section", Unit.MM2, 1, 1e6),
                    MODULUS),
            a -> shorter(a[0], a[1], a[2], a[3]),
            TEXTBOOKS);

    public static final Formula BETWEEN_SUPPORTS = new Formula(
            "δ = 12 F L^3 / (48 E w h^3)",
            symbol("δ", "bow in the middle", Unit.MM, 0, 50),
            List.of(
                    FORCE,
                    symbol("L", "distance of the supports", Unit.MM, 1, 1000),
                    MODULUS,
                    symbol("w", "width", Unit.MM, 1, 500),
                    symbol("h", "thickness", Unit.MM, 0.5, 200)),
            a -> betweenSupports(a[0], a[1], a[2], new Plank(a[3], a[4])),
            TEXTBOOKS);

    private Squeezed() {}

    public static double shorter(double force, double length, double section, double modulus) {
        return force * length / (section * modulus);
    }

    public static double betweenSupports(double force, double span, double modulus, Plank section) {
        return force * span * span * span / (48 * modulus * section.inertia());
    }
}
