package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** What stud, slot and strap stand, each as the pull of the stud in N; mm and N/mm². */
public final class ClampStrength {
    /** Proof stress of a stud of property class 8.8 (from memory: ISO 898-1, 16 mm and less). */
    private static final double PROOF = 580;

    /** What is put on a stud that is used again (Shigley: three quarters of its proof load). */
    private static final double OF_PROOF = 0.75;

    /** Shear in the lips of a grey iron table: a fifth of what it breaks at (common practice). */
    private static final double SHEAR = 45;

    /** Bending of a strap of quenched and tempered steel, half of what it yields at (common practice). */
    private static final double BENDING = 300;

    /** Of a metric stud, As = π/4 (d - 0.9382 P)². */
    public static final Formula STUD = new Formula(
            "F = 0.75 · 580 · π / 4 (d - 0.9382 P)^2",
            symbol("F", "pull that a stud stands again and again", Unit.N, 0, 1e6),
            List.of(symbol("d", "diameter", Unit.MM, 5, 30), symbol("P", "pitch", Unit.MM, 0.5, 4)),
            a -> ofStud(a[0], a[1]),
            Source.of(
                    "ISO 898-1 proof stress and stress area, three quarters for joints that are used again (from memory)"));

    /** Of both lips of a slot, each as thick as the slot is wide (the sizes of ISO 299). */
    public static final Formula LIPS = new Formula(
            "F = 45 · 2 a e",
            symbol("F", "pull that the lips of a slot stand", Unit.N, 0, 1e7),
            List.of(
                    symbol("a", "width of the slot", Unit.MM, 5, 40),
                    symbol("e", "width of the foot of the nut", Unit.MM, 8, 60)),
            a -> ofLips(a[0], a[1]),
            Source.of("computed: shear of both lips over the length of the nut; 45 N/mm² is common practice"));

    /** Of a strap that bends at its slot: 6 W a / (b t²) with W what it presses on the work. */
    public static final Formula STRAP = new Formula(
            "F = 300 b t^2 (p + h) / (6 p h)",
            symbol("F", "pull that a strap stands", Unit.N, 0, 1e7),
            List.of(
                    symbol("p", "pad to stud", Unit.MM, 1, 200),
                    symbol("h", "stud to heel", Unit.MM, 1, 300),
                    symbol("b", "width of the strap less its slot", Unit.MM, 1, 80),
                    symbol("t", "thickness", Unit.MM, 5, 50)),
            a -> ofStrap(a[0], a[1], a[2], a[3]),
            Source.of("computed: bending at the slot; 300 N/mm² is common practice"));

    private ClampStrength() {}

    public static double ofStud(double diameter, double pitch) {
        double core = diameter - 0.9382 * pitch;
        return OF_PROOF * PROOF * Math.PI / 4 * core * core;
    }

    public static double ofLips(double slot, double nut) {
        return SHEAR * 2 * slot * nut;
    }

    public static double ofStrap(double toStud, double toHeel, double width, double thickness) {
        return toStud <= 0 || toHeel <= 0
                ? Double.POSITIVE_INFINITY
                : BENDING * width * thickness * thickness * (toStud + toHeel) / (6 * toStud * toHeel);
    }
}
