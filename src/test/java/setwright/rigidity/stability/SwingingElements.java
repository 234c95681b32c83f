package setwright.rigidity.stability;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import setwright.rigidity.BeamSection;
import setwright.rigidity.MountedTool;

/**
 * The same tool as a chain of beam elements with two degrees of freedom a node and consistent masses, its end on a spring
 * sideways and one against tilting.
 */
record SwingingElements(MountedTool tool, double density, double holder) {
    private static final int EACH = 25;

    Mode first() {
        List<double[]> elements = new ArrayList<>();
        for (BeamSection section : tool.beam().sections()) {
            for (int i = 0; i < EACH; i++) {
                elements.add(new double[] {section.length() / EACH, section.diameter()});
            }
        }
        int size = 2 * elements.size() + 2;
        RealMatrix stiff = new Array2DRowRealMatrix(size, size);
        RealMatrix mass = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < elements.size(); i++) {
            add(stiff, mass, 2 * i, elements.get(i)[0], elements.get(i)[1]);
        }
        stiff.addToEntry(
                0, 0, 1 / (1 / tool.springs().clampShift() + 1 / tool.springs().machine()));
        stiff.addToEntry(1, 1, tool.springs().clampTilt());
        mass.addToEntry(0, 0, holder / 1000);
        return slowest(stiff, mass);
    }

    private void add(RealMatrix stiff, RealMatrix mass, int at, double l, double d) {
        double bend = tool.beam().modulus() * Math.PI * Math.pow(d, 4) / 64 / Math.pow(l, 3);
        double weight = density / 1000 * Math.PI * d * d / 4 * l / 420;
        double[][] k = {
            {12, 6 * l, -12, 6 * l},
            {6 * l, 4 * l * l, -6 * l, 2 * l * l},
            {-12, -6 * l, 12, -6 * l},
            {6 * l, 2 * l * l, -6 * l, 4 * l * l}
        };
        double[][] m = {
            {156, 22 * l, 54, -13 * l},
            {22 * l, 4 * l * l, 13 * l, -3 * l * l},
            {54, 13 * l, 156, -22 * l},
            {-13 * l, -3 * l * l, -22 * l, 4 * l * l}
        };
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                stiff.addToEntry(at + i, at + j, bend * k[i][j]);
                mass.addToEntry(at + i, at + j, weight * m[i][j]);
            }
        }
    }

    /** By the largest eigenvalue of the flexibility, whose end is the sharp one. */
    private Mode slowest(RealMatrix stiff, RealMatrix mass) {
        RealMatrix lower = new CholeskyDecomposition(mass, 1e-9, 1e-30).getL();
        RealMatrix flexible =
                lower.transpose().multiply(MatrixUtils.inverse(stiff)).multiply(lower);
        RealMatrix even = flexible.add(flexible.transpose()).scalarMultiply(0.5);
        var values = new EigenDecompositionSymmetric(even);
        int largest = 0;
        for (int i = 0; i < even.getRowDimension(); i++) {
            largest = values.getEigenvalue(i) > values.getEigenvalue(largest) ? i : largest;
        }
        double squared = 1 / values.getEigenvalue(largest);
        double[] shape = MatrixUtils.inverse(lower.transpose())
                .operate(values.getEigenvector(largest).toArray());
        double tip = shape[shape.length - 2];
        return new Mode(Math.sqrt(squared), 0.017, squared / (tip * tip));
    }
}
