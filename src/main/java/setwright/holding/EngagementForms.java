package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * How far a thread has to be in before the bolt breaks sooner than its thread strips. P the pitch, E the least flank
 * diameter of the bolt, K the largest bore of the nut, d the least outside of the bolt, F the largest flank diameter of the
 * nut, L the engagement; mm and mm².
 */
public final class EngagementForms {
    private static final Source STANDARD = Source.of("FED-STD-H28/2: thread strength, length of engagement");
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.5, 4);
    private static final Symbol ENGAGED = symbol("L", "length of engagement", Unit.MM, 1, 100);
    private static final Symbol BORE = symbol("K", "largest bore of the nut", Unit.MM, 3, 20);
    private static final Symbol BOLT_FLANK = symbol("E", "least flank diameter of the bolt", Unit.MM, 20.5, 40);

    /** Where the nut is as strong as the bolt. */
    public static final Formula LEAST = new Formula(
            "L = 2 A / (π K (0.5 + 0.57735 (E - K) / P))",
            ENGAGED,
            List.of(symbol("A", "stress area", Unit.MM2, 1, 3000), BORE, BOLT_FLANK, PITCH),
            a -> least(a[0], a[1], a[2], a[3]),
            STANDARD);

    /** What is sheared of the thread of the bolt. */
    public static final Formula OF_BOLT = new Formula(
            "A = π L K / P (P / 2 + 0.57735 (E - K))",
            symbol("A", "sheared area of the bolt", Unit.MM2, 0, 1e5),
            List.of(ENGAGED, BORE, BOLT_FLANK, PITCH),
            a -> sheared(a[0], a[1], a[2] - a[1], a[3]),
            STANDARD);

    /** What is sheared of the thread of the hole. */
    public static final Formula OF_HOLE = new Formula(
            "A = π L d / P (P / 2 + 0.57735 (d - F))",
            symbol("A", "sheared area of the hole", Unit.MM2, 0, 1e5),
            List.of(
                    ENGAGED,
                    symbol("d", "least outside of the bolt", Unit.MM, 20.5, 40),
                    symbol("F", "largest flank diameter of the hole", Unit.MM, 3, 20),
                    PITCH),
            a -> sheared(a[0], a[1], a[1] - a[2], a[3]),
            STANDARD);

    private EngagementForms() {}

    public static double least(double stressArea, double bore, double boltFlank, double pitch) {
        return 2 * stressArea / (Math.PI * bore * (0.5 + 0.57735 * (boltFlank - bore) / pitch));
    }

    /** On the cylinder of a diameter, with the flanks overlapping by so much there. */
    public static double sheared(double engaged, double diameter, double overlap, double pitch) {
        return Math.PI * engaged * diameter / pitch * (pitch / 2 + 0.57735 * overlap);
    }
}
