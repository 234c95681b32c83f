package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * The section of a flat part that bends like a beam: its width across the bending and its thickness, mm. Kernels in mm, N,
 * N·mm, N/mm².
 */
public record Plank(double width, double thickness) {
    private static final Source TEXTBOOKS = Source.of("from memory: textbooks on strength of materials");
    private static final Symbol LENGTH = symbol("L", "length that bends", Unit.MM, 1, 1000);
    private static final Symbol MODULUS = symbol("E", "modulus of elasticity", Unit.N_PER_MM2, 30000, 250000);
    private static final Symbol WIDTH = symbol("w", "width", Unit.MM, 1, 500);
    private static final Symbol THICKNESS = symbol("h", "thickness", Unit.MM, 0.5, 200);

    /** In the middle of a beam that two equal moments bend at its ends, I = w h³ / 12. */
    public static final Formula BOW = new Formula(
            "δ = 12 M L^2 / (8 E w h^3)",
            symbol("δ", "bow in the middle", Unit.MM, 0, 5),
            List.of(symbol("M", "moment at each end", Unit.N_MM, 1, 1000000), LENGTH, MODULUS, WIDTH, THICKNESS),
            a -> bow(a[0], a[1], a[2], new Plank(a[3], a[4])),
            TEXTBOOKS);

    /** Of a beam that is held at one end and loaded at the other, I = w h³ / 12. */
    public static final Formula DEFLECTION = new Formula(
            "δ = 12 F L^3 / (3 E w h^3)",
            symbol("δ", "deflection at the end", Unit.MM, 0, 5),
            List.of(symbol("F", "force at the end", Unit.N, 1, 20000), LENGTH, MODULUS, WIDTH, THICKNESS),
            a -> deflection(a[0], a[1], a[2], new Plank(a[3], a[4])),
            TEXTBOOKS);

    public Plank {
        if (!(width > 0 && thickness > 0)) {
            throw new IllegalArgumentException(
                    "A flat part has width and thickness above 0 mm, not " + width + " and " + thickness + " mm.");
        }
    }

    public double inertia() {
        return width * thickness * thickness * thickness / 12;
    }

    /** Mid-length bow under equal moments at both ends, mm. */
    public static double bow(double moment, double length, double modulus, Plank section) {
        return moment * length * length / (8 * modulus * section.inertia());
    }

    /** End deflection of a length that stands out, mm. */
    public static double deflection(double force, double length, double modulus, Plank section) {
        return force * length * length * length / (3 * modulus * section.inertia());
    }
}
