package setwright.rigidity;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A tool in its holder as a chain of beam elements with a deflection and a slope at every node: Hermite shape functions, the
 * clamp and the taper as springs between doubled nodes, the machine as a spring to the ground.
 */
final class BeamElements {
    private static final double STIFF = 1e16;

    private final RealMatrix stiffness;
    private final double[] places;
    private final int first;

    private BeamElements(RealMatrix stiffness, double[] places, int first) {
        this.stiffness = stiffness;
        this.places = places;
        this.first = first;
    }

    /** At least so many elements in every section. */
    static BeamElements of(ToolBeam beam, Springs springs, int each) {
        HolderSeat seat = springs.seat();
        int body = seat.projection() > 0 ? each : 0;
        int nodes = 1 + body + 1 + each * beam.sections().size();
        RealMatrix k = new Array2DRowRealMatrix(2 * nodes, 2 * nodes);
        double[] places = new double[nodes];
        k.addToEntry(0, 0, finite(springs.machine()));
        k.addToEntry(1, 1, finite(seat.taperTilt()));
        int node = 0;
        for (int i = 0; i < body; i++, node++) {
            element(k, node, seat.projection() / each, ToolMaterials.STEEL * Math.PI * fourth(seat.diameter()) / 64);
        }
        spring(k, 2 * node, finite(springs.clampShift()));
        spring(k, 2 * node + 1, finite(springs.clampTilt()));
        node++;
        int first = node;
        for (BeamSection section : beam.sections()) {
            for (int i = 0; i < each; i++, node++) {
                double length = section.length() / each;
                element(k, node, length, beam.modulus() * Math.PI * fourth(section.diameter()) / 64);
                places[node + 1] = places[node] + length;
            }
        }
        return new BeamElements(k, places, first);
    }

    private static double finite(double spring) {
        return Math.min(spring, STIFF);
    }

    private static double fourth(double d) {
        return d * d * d * d;
    }

    private static void spring(RealMatrix k, int at, double stiffness) {
        k.addToEntry(at, at, stiffness);
        k.addToEntry(at + 2, at + 2, stiffness);
        k.addToEntry(at, at + 2, -stiffness);
        k.addToEntry(at + 2, at, -stiffness);
    }

    private static void element(RealMatrix k, int node, double l, double ei) {
        double[][] local = {
            {12, 6 * l, -12, 6 * l},
            {6 * l, 4 * l * l, -6 * l, 2 * l * l},
            {-12, -6 * l, 12, -6 * l},
            {6 * l, 2 * l * l, -6 * l, 4 * l * l}
        };
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 4; column++) {
                k.addToEntry(2 * node + row, 2 * node + column, local[row][column] * ei / (l * l * l));
            }
        }
    }

    int tip() {
        return places.length - 1;
    }

    /** A node of the tool, a share of the way from its holder to its tip. */
    int node(double share) {
        return first + (int) Math.round(share * (tip() - first));
    }

    double place(int node) {
        return places[node];
    }

    /** Deflections and slopes of all nodes under one newton at a node. */
    private RealVector under(int node) {
        RealVector load = new ArrayRealVector(stiffness.getRowDimension());
        load.setEntry(2 * node, 1);
        return new LUDecomposition(stiffness).getSolver().solve(load);
    }

    double deflection(int at, int load) {
        return under(load).getEntry(2 * at);
    }

    double slope(int at, int load) {
        return under(load).getEntry(2 * at + 1);
    }
}
