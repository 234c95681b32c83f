package setwright.quantity.thread;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A screw thread: its designation and basic sizes in millimetres, by the {@link ThreadProfile} of its series.
 *
 * @param designation as listed, for instance {@code M8}, {@code M10x1}, {@code 1/4-20}
 */
public record ScrewThread(String designation, Series series, double major, double pitch) {
    private static final Symbol MAJOR = symbol("d", "major diameter", Unit.MM, 1, 100);
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.2, 6);
    private static final Source PROFILE = Source.of("computed: geometry of the 60° profile of ISO 68-1 and ASME B1.1");
    private static final Source METRIC_AREA = Source.of(
            "from memory: ISO 898-1; agrees with areas read at https://shayonaengg.com/fasteners_&_threads.html");
    private static final Source UNIFIED_AREA =
            Source.of("from memory: ASME B1.1; agrees with areas read at https://ar.scribd.com/document/395466526");

    public static final Formula PITCH_DIAMETER = new Formula(
            "d2 = d - 0.649519 P",
            symbol("d2", "pitch diameter", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH),
            v -> pitchDiameter(v[0], v[1]),
            PROFILE);
    public static final Formula MINOR = new Formula(
            "D1 = d - 1.082532 P",
            symbol("D1", "basic minor diameter", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH),
            v -> minor(v[0], v[1]),
            PROFILE);
    private static final Source WHITWORTH =
            Source.of("from memory: BS 84, depth 0.640327 P; geometry of the 55° profile");
    public static final Formula WHITWORTH_PITCH_DIAMETER = new Formula(
            "d2 = d - 0.640327 P",
            symbol("d2", "pitch diameter", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH),
            v -> ThreadProfile.WHITWORTH.pitchDiameter(v[0], v[1]),
            WHITWORTH);
    public static final Formula WHITWORTH_MINOR = new Formula(
            "D1 = d - 1.280654 P",
            symbol("D1", "basic minor diameter", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH),
            v -> ThreadProfile.WHITWORTH.minor(v[0], v[1]),
            WHITWORTH);
    private static final Source ASSOCIATION = Source.of("from memory: BS 93, depth 0.6 P");
    public static final Formula BA_PITCH_DIAMETER = new Formula(
            "d2 = d - 0.6 P",
            symbol("d2", "pitch diameter", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH),
            v -> ThreadProfile.BRITISH_ASSOCIATION.pitchDiameter(v[0], v[1]),
            ASSOCIATION);
    public static final Formula BA_MINOR = new Formula(
            "D1 = d - 1.2 P",
            symbol("D1", "basic minor diameter", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH),
            v -> ThreadProfile.BRITISH_ASSOCIATION.minor(v[0], v[1]),
            ASSOCIATION);
    private static final Source TAPER_PIPE = Source.of("from memory: ASME B1.20.1, at the small end of the thread");
    public static final Formula NPT_PITCH_DIAMETER = new Formula(
            "E0 = d - (0.05 d / 25.4 + 1.1) P",
            symbol("E0", "pitch diameter at the small end", Unit.MM, 0, 100),
            List.of(symbol("d", "outside diameter of the pipe", Unit.MM, 5, 100), PITCH),
            v -> ThreadProfile.TAPER_PIPE.pitchDiameter(v[0], v[1]),
            TAPER_PIPE);
    public static final Formula NPT_MINOR = new Formula(
            "K0 = E0 - 0.8 P",
            symbol("K0", "minor diameter at the small end", Unit.MM, 0, 100),
            List.of(symbol("E0", "pitch diameter at the small end", Unit.MM, 5, 100), PITCH),
            v -> v[0] - 0.8 * v[1],
            TAPER_PIPE);
    public static final Formula METRIC_STRESS_AREA = new Formula(
            "As = π / 4 (d - 0.938194 P)^2",
            symbol("As", "stress area", Unit.MM2, 0, 10_000),
            List.of(MAJOR, PITCH),
            v -> metricStressArea(v[0], v[1]),
            METRIC_AREA);
    public static final Formula UNIFIED_STRESS_AREA = new Formula(
            "As = π / 4 (d - 0.974279 P)^2",
            symbol("As", "stress area", Unit.MM2, 0, 10_000),
            List.of(MAJOR, PITCH),
            v -> unifiedStressArea(v[0], v[1]),
            UNIFIED_AREA);

    /** The series that a thread belongs to; OTHER for a pitch that is not listed. */
    public enum Series {
        ISO_COARSE("ISO coarse"),
        ISO_FINE("ISO fine"),
        ISO_OTHER("ISO"),
        UNC("UNC"),
        UNF("UNF"),
        UN_OTHER("UN"),
        BSW("BSW"),
        BSF("BSF"),
        BA("BA"),
        BSP("BSP"),
        NPT("NPT");

        private final String words;

        Series(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public boolean isInch() {
            return switch (this) {
                case UNC, UNF, UN_OTHER, BSW, BSF, BSP, NPT -> true;
                case ISO_COARSE, ISO_FINE, ISO_OTHER, BA -> false;
            };
        }

        public ThreadProfile profile() {
            return switch (this) {
                case ISO_COARSE, ISO_FINE, ISO_OTHER, UNC, UNF, UN_OTHER -> ThreadProfile.SIXTY_DEGREES;
                case BSW, BSF, BSP -> ThreadProfile.WHITWORTH;
                case BA -> ThreadProfile.BRITISH_ASSOCIATION;
                case NPT -> ThreadProfile.TAPER_PIPE;
            };
        }
    }

    public ScrewThread {
        if (!(pitch > 0 && series.profile().minor(major, pitch) > 0) || !Double.isFinite(major)) {
            throw new IllegalArgumentException("A thread of " + major + " mm cannot have a pitch of " + pitch + " mm.");
        }
    }

    public double pitchDiameter() {
        return series.profile().pitchDiameter(major, pitch);
    }

    /** Basic minor diameter of the nut thread. */
    public double minor() {
        return series.profile().minor(major, pitch);
    }

    /** Tensile stress area of the bolt, mm². */
    public double stressArea() {
        return series.isInch() ? unifiedStressArea(major, pitch) : metricStressArea(major, pitch);
    }

    /** The published rule that {@link #stressArea()} follows. */
    public Formula stressAreaRule() {
        return series.isInch() ? UNIFIED_STRESS_AREA : METRIC_STRESS_AREA;
    }

    public static double pitchDiameter(double major, double pitch) {
        return major - 0.649519 * pitch;
    }

    public static double minor(double major, double pitch) {
        return major - 1.082532 * pitch;
    }

    public static double metricStressArea(double major, double pitch) {
        return circle(major - 0.938194 * pitch);
    }

    public static double unifiedStressArea(double major, double pitch) {
        return circle(major - 0.974279 * pitch);
    }

    private static double circle(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }
}
