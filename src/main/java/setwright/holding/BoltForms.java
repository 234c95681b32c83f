package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * What a bolt bears and what it is done up to. d its diameter, P its pitch, e its flank diameter, r its root diameter (all
 * mm), A its stress area in mm², S a stress in N/mm², g and k the friction in the thread and under the head, w and h the
 * diameters of the bearing face and of the clearance hole.
 */
public final class BoltForms {
    /** What is asked of a bolt that is done up again and again, of its proof load (common practice). */
    public static final double REUSED = 0.75;

    private static final Source GUIDELINE = Source.of("VDI 2230 (2001): done up to 0.9 of the yield point");
    private static final Symbol DIAMETER = symbol("d", "diameter", Unit.MM, 3, 48);
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.5, 3);
    private static final Symbol AREA = symbol("A", "stress area", Unit.MM2, 0, 3000);
    private static final Symbol STRESS = symbol("S", "stress", Unit.N_PER_MM2, 100, 1200);
    private static final Symbol FLANK = symbol("e", "flank diameter", Unit.MM, 10, 48);
    private static final Symbol ROOT = symbol("r", "root diameter", Unit.MM, 3, 9);
    private static final Symbol PRELOAD = symbol("F", "preload", Unit.N, 0, 1e7);
    private static final Symbol IN_THREAD = symbol("g", "friction in the thread", Unit.NONE, 0.05, 0.4);

    /** Of a metric thread. */
    public static final Formula STRESS_AREA = new Formula(
            "A = π (d - 0.9382 P)^2 / 4",
            AREA,
            List.of(DIAMETER, PITCH),
            a -> stressArea(a[0], a[1]),
            Source.of("ISO 898-1: nominal stress area"));

    /** Of an inch thread. */
    public static final Formula INCH_STRESS_AREA = new Formula(
            "A = 0.7854 (d - 0.9743 P)^2",
            AREA,
            List.of(DIAMETER, PITCH),
            a -> inchStressArea(a[0], a[1]),
            Source.of("ASME B1.1 (from memory): tensile stress area"));

    /** What a bolt bears without staying longer. */
    public static final Formula PROOF_LOAD = new Formula(
            "F = S A",
            symbol("F", "proof load", Unit.N, 0, 1e7),
            List.of(STRESS, AREA),
            a -> a[0] * a[1],
            Source.of("ISO 898-1, SAE J429: proof stress times stress area"));

    /** Preload at which pull and twist together come to 0.9 of the yield point. */
    public static final Formula TO_YIELD = new Formula(
            "F = 0.9 S π ((e + r) / 2)^2 / (4 √(1 + 3 (3 e / (e + r) (P / (π e) + 1.155 g))^2))",
            PRELOAD,
            List.of(STRESS, FLANK, ROOT, PITCH, IN_THREAD),
            a -> toYield(a[0], new Thread(a[1], a[2], a[3]), a[4]),
            GUIDELINE);

    /** Torque that does a bolt up to a preload. */
    public static final Formula TIGHTENING = new Formula(
            "M = F (0.16 P + 0.58 e g + (w + h) k / 4)",
            symbol("M", "torque", Unit.N_MM, 0, 1e8),
            List.of(
                    PRELOAD,
                    PITCH,
                    FLANK,
                    IN_THREAD,
                    symbol("w", "outside of the bearing face", Unit.MM, 5, 60),
                    symbol("h", "clearance hole", Unit.MM, 3, 50),
                    symbol("k", "friction under the head", Unit.NONE, 0.05, 0.4)),
            a -> a[0] * (0.16 * a[1] + 0.58 * a[2] * a[3] + (a[4] + a[5]) * a[6] / 4),
            GUIDELINE);

    private BoltForms() {}

    /** A 60 degree thread by its flank and root diameter and its pitch, mm. */
    public record Thread(double flank, double root, double pitch) {
        public static Thread metric(double diameter, double pitch) {
            return new Thread(diameter - 0.649519 * pitch, diameter - 1.226869 * pitch, pitch);
        }
    }

    public static double stressArea(double diameter, double pitch) {
        double across = diameter - 0.9382 * pitch;
        return Math.PI / 4 * across * across;
    }

    public static double inchStressArea(double diameter, double pitch) {
        double across = diameter - 0.9743 * pitch;
        return 0.7854 * across * across;
    }

    public static double toYield(double yield, Thread thread, double friction) {
        double across = (thread.flank() + thread.root()) / 2;
        double twist = 1.5 * thread.flank() / across * (thread.pitch() / (Math.PI * thread.flank()) + 1.155 * friction);
        return 0.9 * yield * Math.PI / 4 * across * across / Math.sqrt(1 + 3 * twist * twist);
    }

    /** Friction equal in the thread and under the head. */
    public static double tightening(double preload, Thread thread, double friction, double bearing, double hole) {
        return preload * (0.16 * thread.pitch() + 0.58 * thread.flank() * friction + (bearing + hole) / 4 * friction);
    }
}
