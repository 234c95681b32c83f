package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.shop.Tap;

/**
 * Torque of a tap. Each formula has its own set of specific forces; a force of one set does not belong in the other.
 * Sources differ by half for grey iron. Kernels in mm, N/mm², N·mm.
 */
public final class Tapping {
    private static final Symbol TORQUE_NM = symbol("M", "torque", Unit.N_M, 0.001, 1000);
    private static final Symbol MAJOR = symbol("D", "major diameter", Unit.MM, 1, 64);
    private static final Symbol SPECIFIC = symbol("kc", "specific force of tapping", Unit.N_PER_MM2, 300, 6000);

    public static final Formula TORQUE = new Formula(
            "M = kc P^2 D k W / 8000",
            TORQUE_NM,
            List.of(
                    SPECIFIC,
                    symbol("P", "pitch", Unit.MM, 0.2, 6),
                    MAJOR,
                    symbol("k", "factor of the kind of tap", Unit.NONE, 0.5, 3),
                    symbol("W", "wear factor", Unit.NONE, 1, 2)),
            a -> torque(a[0], a[1], a[2]) * a[3] * a[4],
            Source.of("tap-maker formula page, MD = kc P² d / 8000"));

    /** Second opinion, from the thread's depth; the flank angle is 30 degrees for metric and unified threads. */
    public static final Formula TORQUE_BY_DEPTH = new Formula(
            "M = tan(θ) kc K (D - d)^2 (D + 2 d) / 24000",
            TORQUE_NM,
            List.of(
                    symbol("θ", "flank angle", Unit.DEG, 25, 32),
                    SPECIFIC,
                    symbol("K", "correction of the tap", Unit.NONE, 0.7, 1.7),
                    MAJOR,
                    symbol("d", "core hole", Unit.MM, 0.7, 64)),
            a -> torqueByDepth(a[0], a[1] * a[2], a[3], a[4]),
            Source.of("tap-maker catalogue 2021 p.640"));

    /** Torque beside that of a hand tap with straight flutes. */
    public static final Table KIND_FACTOR = new Table(
            "factor of the kind of tap",
            "spiral point 0.60 to 0.65, spiral flute 0.70 to 0.75, forming 2 to 3 times a cutting tap",
            Unit.NONE,
            Source.of("tap-maker catalogue 2022-23, relative torques in S50C M10x1.5"));

    /** Bottoming and dull taps. */
    public static final Band DULL = new Band(1.5, 1.75, 2);

    private Tapping() {}

    /** Torque beside that of a tap with straight flutes, with its band. */
    public static Band kindFactor(Tap.Flute flute) {
        return switch (flute) {
            case STRAIGHT -> new Band(1, 1, 1);
            case SPIRAL_POINT -> new Band(0.60, 0.625, 0.65);
            case SPIRAL_FLUTE -> new Band(0.70, 0.725, 0.75);
            case FORM -> new Band(2, 2.5, 3);
        };
    }

    /** Torque of a sharp tap with straight flutes. */
    public static double torque(double specificForce, double pitch, double majorDiameter) {
        return specificForce * pitch * pitch * majorDiameter / 8;
    }

    /** With the specific force of its own set, times the correction of the tap. */
    public static double torqueByDepth(double flankAngle, double specificForce, double majorDiameter, double coreHole) {
        double depth = majorDiameter - coreHole;
        return StrictMath.tan(flankAngle) * specificForce * depth * depth * (majorDiameter + 2 * coreHole) / 24;
    }
}
