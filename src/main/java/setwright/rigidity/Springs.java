package setwright.rigidity;

/**
 * What a tool's holder and machine give; infinite where something is taken as rigid.
 *
 * @param clampShift sideways spring of the clamp at the holder's face, N/mm
 * @param clampTilt spring of the clamp against tilting, N·mm/rad
 * @param machine everything behind the clamp together, taper, spindle, column and table, N/mm
 */
public record Springs(double clampShift, double clampTilt, double machine) {
    /** A holder that does not give at all. */
    public static final Springs RIGID =
            new Springs(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Springs {
        if (!(clampShift > 0 && clampTilt > 0 && machine > 0)) {
            throw new IllegalArgumentException("A spring is stiffer than 0, not " + clampShift + " N/mm, " + clampTilt
                    + " N·mm/rad and " + machine + " N/mm.");
        }
    }

    /** A rigid clamp on a machine that gives. */
    public static Springs ofMachine(double machine) {
        return RIGID.withMachine(machine);
    }

    public Springs withMachine(double stiffness) {
        return new Springs(clampShift, clampTilt, stiffness);
    }
}
