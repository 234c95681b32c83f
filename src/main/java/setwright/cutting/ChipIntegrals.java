package setwright.cutting;

/**
 * The forces on a tooth per millimetre of depth, summed up over the arc from where it enters to an angle. With a helix
 * the edge stands at all angles between its tip and its top at once, so that the force on it is a difference of two
 * such sums. In each cell of the arc the force is a parabola through its ends and its middle, so that the sum is that
 * of Simpson's rule; within a cell it is the integral of the parabola. The cells grow from both ends of the arc, where a chip may start from nothing, towards its middle.
 */
final class ChipIntegrals {
    /** Feed, cross, axial, tangential. */
    static final int PARTS = 4;

    /** For one cut of even teeth. */
    static final int FINE = 64;

    /** For unlike teeth, whose chips have corners within the arc. */
    static final int COARSE = 24;

    /** For one of many slices of even teeth. */
    static final int SLICED = 16;

    private final int cells;
    private final double start;
    private final double arc;
    /** For both ends and the middle of every cell the forces, N/mm. */
    private final double[] force;
    /** For every cell what has been summed up to it, N/mm times rad. */
    private final double[] sum;

    ChipIntegrals(MillingCut cut, EdgeForce law, int cells) {
        this.cells = cells;
        force = new double[PARTS * (2 * cells + 1)];
        sum = new double[PARTS * (cells + 1)];
        start = cut.engagement().start();
        arc = cut.engagement().arc();
        var edge = new SlantedEdge(cut, law);
        edge.fill(force, 0, start);
        for (int i = 0; i < cells; i++) {
            double from = node(i);
            double to = node(i + 1);
            edge.fill(force, PARTS * (2 * i + 1), start + (from + to) / 2);
            edge.fill(force, PARTS * (2 * i + 2), start + to);
            for (int part = 0; part < PARTS; part++) {
                sum[PARTS * (i + 1) + part] = sum[PARTS * i + part] + (to - from) * whole(2 * PARTS * i + part);
            }
        }
    }

    /** The mean of the parabola over a cell. */
    private double whole(int at) {
        return (force[at] + 4 * force[at + PARTS] + force[at + 2 * PARTS]) / 6;
    }

    /** Where a cell begins, from the start of the arc: by squares from either end. */
    private double node(int i) {
        double along = (double) i / cells;
        return along < 0.5 ? 2 * along * along * arc : (1 - 2 * (1 - along) * (1 - along)) * arc;
    }

    private int cellAt(double angle) {
        double along = Math.min(Math.max((angle - start) / arc, 0), 1);
        double share = along < 0.5 ? Math.sqrt(along / 2) : 1 - Math.sqrt((1 - along) / 2);
        return Math.min((int) (share * cells), cells - 1);
    }

    /** Force of a tooth without helix at an angle within the arc, times a scale, added to {@code to}. */
    void addForce(double angle, double scale, double[] to) {
        int i = cellAt(angle);
        double s = (angle - start - node(i)) / (node(i + 1) - node(i));
        for (int part = 0; part < PARTS; part++) {
            int at = 2 * PARTS * i + part;
            double value = force[at] * (1 - s) * (1 - 2 * s)
                    + force[at + PARTS] * 4 * s * (1 - s)
                    + force[at + 2 * PARTS] * s * (2 * s - 1);
            to[part] += scale * value;
        }
    }

    /** The sum from where the tooth enters to an angle within the arc, times a scale, added to {@code to}. */
    void addSum(double angle, double scale, double[] to) {
        int i = cellAt(angle);
        double from = node(i);
        double width = node(i + 1) - from;
        double s = (angle - start - from) / width;
        double cubed = s * s * s / 3;
        double first = scale * width * (s - 1.5 * s * s + 2 * cubed);
        double middle = scale * width * (2 * s * s - 4 * cubed);
        double last = scale * width * (2 * cubed - s * s / 2);
        int at = 2 * PARTS * i;
        for (int part = 0; part < PARTS; part++) {
            to[part] += scale * sum[PARTS * i + part]
                    + first * force[at + part]
                    + middle * force[at + PARTS + part]
                    + last * force[at + 2 * PARTS + part];
        }
    }

    /** The force law on an edge that leans back by the lead angle. */
    private static final class SlantedEdge {
        private final EdgeForce law;
        private final double feed;
        private final double sinLead;
        private final double cosLead;

        SlantedEdge(MillingCut cut, EdgeForce law) {
            this.law = law;
            sinLead = StrictMath.sin(cut.cutter().leadAngle());
            cosLead = StrictMath.cos(cut.cutter().leadAngle());
            feed = cut.feedPerTooth() * cosLead;
        }

        /**
         * Fx = -Ft cos φ - Fr sin φ, Fy = Ft sin φ - Fr cos φ. On a slanted edge the normal force also pushes the
         * cutter towards the spindle, and each millimetre of depth has 1 / cos λ of edge.
         */
        void fill(double[] force, int at, double angle) {
            double sin = StrictMath.sin(angle);
            double cos = StrictMath.cos(angle);
            EdgeForce.Parts onEdge = law.at(Math.max(0, feed * sin));
            double tangential = onEdge.tangential() / cosLead;
            double normal = onEdge.normal() / cosLead;
            double along = onEdge.along() / cosLead;
            double radial = normal * cosLead + along * sinLead;
            force[at] = -tangential * cos - radial * sin;
            force[at + 1] = tangential * sin - radial * cos;
            force[at + 2] = along * cosLead - normal * sinLead;
            force[at + 3] = tangential;
        }
    }
}
