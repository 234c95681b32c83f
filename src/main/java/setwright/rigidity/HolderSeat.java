package setwright.rigidity;

/**
 * The holder between the spindle and the face that the tool stands out of: a steel body that bends, on a taper that
 * tilts. How far the taper gives sideways is in the spring of the machine.
 *
 * @param projection from the spindle nose to the holder's face, mm; 0 where nothing of it is counted
 * @param diameter of the body, mm
 * @param taperTilt spring of the taper against tilting, N·mm/rad; infinite where it is taken as rigid
 */
public record HolderSeat(double projection, double diameter, double taperTilt) {
    /** A holder that neither bends nor tilts. */
    public static final HolderSeat RIGID = new HolderSeat(0, 1, Double.POSITIVE_INFINITY);

    public HolderSeat {
        if (!(projection >= 0 && diameter > 0 && taperTilt > 0)) {
            throw new IllegalArgumentException(
                    "A holder has a projection from 0 mm, a diameter above 0 mm and a taper stiffer than 0, not "
                            + projection + ", " + diameter + ", " + taperTilt + ".");
        }
    }

    /** How far a place gives for each newton at another, both measured from the holder's face; mm/N. */
    public double compliance(double place, double load) {
        double far = projection + place;
        double lever = projection + load;
        double bent = projection == 0 ? 0 : body().compliance(far, lever);
        return bent + far * lever / taperTilt;
    }

    /** How far the holder's face leans for each newton at a place from it, rad/N. */
    public double slope(double load) {
        double lever = projection + load;
        double bent = projection == 0 ? 0 : body().slope(projection, lever);
        return bent + lever / taperTilt;
    }

    private ToolBeam body() {
        return ToolBeam.rod(projection, diameter, ToolMaterials.STEEL);
    }
}
