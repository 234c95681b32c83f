package setwright.rigidity.stability;

import java.util.List;

/** How far the tip moves in one direction for each newton that shakes it, mm/N, by the circular frequency of the shaking. */
public interface Receptance {
    /** What does not give at all. */
    Receptance RIGID = new Receptance() {
        @Override
        public double real(double frequency) {
            return 0;
        }

        @Override
        public double imaginary(double frequency) {
            return 0;
        }

        @Override
        public List<Resonance> resonances() {
            return List.of();
        }
    };

    double real(double frequency);

    double imaginary(double frequency);

    /** Where it rings: the frequencies near which it has to be looked at closely. */
    List<Resonance> resonances();

    /**
     * A peak of the response.
     *
     * @param frequency rad/s
     * @param damping as a share of the critical
     */
    record Resonance(double frequency, double damping) {}
}
