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

    /** In the middle between two supports, under a force there, I = w h³ / 12. */
    public static final Formula SAG = new Formula(
            "δ = 12 F L^3 / (48 E w h^3)",
            symbol("δ", "sag in the middle", Unit.MM, 0, 5),
            List.of(symbol("F", "force in the middle", Unit.N, 1, 20000), LENGTH, MODULUS, WIDTH, THICKNESS),
            a -> sag(a[0], a[1], a[2], new Plank(a[3], a[4])),
            TEXTBOOKS);

    /** Force along it under which it bows out, its ends free to turn (Euler), I = w h³ / 12. */
    public static final Formula BUCKLING = new Formula(
            "F = π^2 E w h^3 / (12 L^2)",
            symbol("F", "force that bows it out", Unit.N, 0, 1e9),
            List.of(LENGTH, MODULUS, WIDTH, THICKNESS),
            a -> buckling(a[0], a[1], new Plank(a[2], a[3])),
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

    /** Sag in the middle between two supports, mm. */
    public static double sag(double force, double span, double modulus, Plank section) {
        return force * span * span * span / (48 * modulus * section.inertia());
    }

    /** Force that bows a length out that is pressed at its ends, N. */
    public static double buckling(double length, double modulus, Plank section) {
        return Math.PI * Math.PI * modulus * section.inertia() / (length * length);
    }

    /** End deflection of a length that stands out, mm. */
    public static double deflection(double force, double length, double modulus, Plank section) {
        return force * length * length * length / (3 * modulus * section.inertia());
    }
}
