package setwright.rigidity.stability;

import java.util.List;
import java.util.stream.Stream;
import setwright.cutting.Direction;
import setwright.cutting.Engagement;

/** The cutters of the published inputs. */
final class Examples {
    /** Two teeth at 922 Hz: 0.03993 kg, Kt 600 and Kn 200 N/mm². */
    static final Mode BENCHMARK = Mode.ofHertz(922, 0.011, benchmarkStiffness(0.03993));

    static final Mode BENCHMARK_RIGID = BENCHMARK.withStiffness(Double.POSITIVE_INFINITY);

    private Examples() {}

    /** m w², N/mm. */
    static double benchmarkStiffness(double mass) {
        double w = 2 * Math.PI * 922;
        return mass * w * w / 1000;
    }

    static ToothCut benchmark(double width) {
        Direction direction = width < 1 ? Direction.CLIMB : Direction.SLOT;
        return new ToothCut(2, Engagement.of(direction, width, 1), 600, 200.0 / 600);
    }

    static Mode benchmarkY(double directions) {
        return directions == 2 ? BENCHMARK : BENCHMARK_RIGID;
    }

    /** 31.75 mm, two teeth, half immersion. */
    static ToothCut twoModeCut(boolean climb) {
        Direction direction = climb ? Direction.CLIMB : Direction.CONVENTIONAL;
        return new ToothCut(2, Engagement.of(direction, 0.5, 1), 1319.4, 788.8 / 1319.4);
    }

    static ZeroOrder twoModes(boolean climb) {
        return ZeroOrder.of(
                twoModeCut(climb),
                new Residues(List.of(
                        new Residue(452.77, 0.123718, 9.202966e-5, -1.862195e-4),
                        new Residue(1448.53, 0.01651, -4.181562e-5, -3.043618e-4))),
                new Residues(List.of(
                        new Residue(516.17, 0.0243, -2.3929e-6, -1.721539e-4),
                        new Residue(1407.64, 0.0324, 4.055052e-5, -3.618808e-4))));
    }

    static final ToothCut CUT_603 = new ToothCut(3, Engagement.of(Direction.CONVENTIONAL, 0.5, 1), 600, 0.07);
    static final Mode X_603 = Mode.ofHertz(603, 0.039, 5590);
    static final Mode Y_666 = Mode.ofHertz(666, 0.035, 5715);

    /**
     * A measured mode with its residue (m/N·rad/s): r / (i w - p) and its conjugate.
     *
     * @param real part of the residue
     * @param imaginary part of the residue
     */
    record Residue(double hertz, double damping, double real, double imaginary) {
        double w() {
            return 2 * Math.PI * hertz;
        }

        /** (α + β s) / (s² + 2 ζ w s + w²) at s = i shaken, mm/N. */
        double[] at(double shaken) {
            double wd = w() * Math.sqrt(1 - damping * damping);
            double alpha = 2 * (damping * w() * real - wd * imaginary);
            double beta = 2 * real * shaken;
            double dr = w() * w() - shaken * shaken;
            double di = 2 * damping * w() * shaken;
            double size = dr * dr + di * di;
            return new double[] {1000 * (alpha * dr + beta * di) / size, 1000 * (beta * dr - alpha * di) / size};
        }
    }

    /** Modes that add up. */
    record Residues(List<Residue> modes) implements Receptance {
        @Override
        public double real(double shaken) {
            return modes.stream().mapToDouble(one -> one.at(shaken)[0]).sum();
        }

        @Override
        public double imaginary(double shaken) {
            return modes.stream().mapToDouble(one -> one.at(shaken)[1]).sum();
        }

        @Override
        public List<Resonance> resonances() {
            return Stream.of(modes)
                    .flatMap(List::stream)
                    .map(one -> new Resonance(one.w(), one.damping()))
                    .toList();
        }
    }
}
