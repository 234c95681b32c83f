package setwright.rigidity;

/**
 * What a tool's holder and machine give; infinite where something is taken as rigid.
 *
 * @param clampShift sideways spring of the clamp at the holder's face, N/mm
 * @param clampTilt spring of the clamp against tilting, N·mm/rad
 * @param machine everything behind the holder together, taper, spindle, column and table, sideways at the nose, N/mm
 * @param seat the holder itself and the tilt of its taper
 */
public record Springs(double clampShift, double clampTilt, double machine, HolderSeat seat) {
    /** A holder that does not give at all. */
    public static final Springs RIGID =
            new Springs(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Springs {
        if (!(clampShift > 0 && clampTilt > 0 && machine > 0)) {
            throw new IllegalArgumentException("A spring is stiffer than 0, not " + clampShift + " N/mm, " + clampTilt
                    + " N·mm/rad and " + machine + " N/mm.");
        }
    }

    /** On a holder that does not bend, in a taper that does not tilt. */
    public Springs(double clampShift, double clampTilt, double machine) {
        this(clampShift, clampTilt, machine, HolderSeat.RIGID);
    }

    /** A rigid clamp on a machine that gives. */
    public static Springs ofMachine(double machine) {
        return RIGID.withMachine(machine);
    }

    public Springs withMachine(double stiffness) {
        return new Springs(clampShift, clampTilt, stiffness, seat);
    }

    /** How far a place gives for each newton at another, both from the holder's face; mm/N. */
    public double compliance(double place, double load) {
        return 1 / clampShift + place * load / clampTilt + 1 / machine + seat.compliance(place, load);
    }
}
