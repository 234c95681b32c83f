package setwright.rigidity;

import java.util.ArrayList;
import java.util.List;

/**
 * A length of a round beam.
 *
 * @param diameter of a rod that is as stiff; for a fluted length the core ratio times the cutting diameter
 */
public record BeamSection(double length, double diameter) {
    public BeamSection {
        if (!(length >= 0 && diameter > 0) || Double.isInfinite(length) || Double.isInfinite(diameter)) {
            throw new IllegalArgumentException(
                    "A section of a beam has a length from 0 mm and a diameter above 0 mm, not " + length + " and "
                            + diameter + ".");
        }
    }

    private static final int SLICES = 40;

    /**
     * A length that tapers evenly, in slices whose rod has the same mean compliance, so that each is exact under a constant
     * moment.
     */
    public static List<BeamSection> taper(double length, double from, double to) {
        List<BeamSection> slices = new ArrayList<>();
        for (int i = 0; i < SLICES; i++) {
            double begins = from + (to - from) * i / SLICES;
            double ends = from + (to - from) * (i + 1) / SLICES;
            slices.add(new BeamSection(length / SLICES, evened(begins, ends)));
        }
        return slices;
    }

    /** The mean of 1 / d⁴ over a taper is (a² + a b + b²) / (3 a³ b³). */
    private static double evened(double a, double b) {
        return Math.sqrt(Math.sqrt(3 * a * a * a * b * b * b / (a * a + a * b + b * b)));
    }
}
