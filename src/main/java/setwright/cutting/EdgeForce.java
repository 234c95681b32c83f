package setwright.cutting;

/** The force on a millimetre of cutting edge by chip thickness. */
public sealed interface EdgeForce permits KienzleForce, LinearEdgeForce, SharedForce {
    /** The force at a chip thickness in mm, in N/mm; at none it is that of the bare edge. */
    Parts at(double chip);

    Kind kind();

    /**
     * The parts of the force on the cutter.
     *
     * @param tangential against the motion of the edge
     * @param normal normal to the edge, towards the body of the cutter: radial on a square shoulder
     * @param along along the edge, away from the spindle: axial on a square shoulder
     */
    record Parts(double tangential, double normal, double along) {}

    /** The kinds of force law. */
    enum Kind {
        KIENZLE,
        LINEAR_EDGE,
        SHARED
    }
}
