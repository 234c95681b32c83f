package setwright.rigidity;

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
}
