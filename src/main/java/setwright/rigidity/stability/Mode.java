package setwright.rigidity.stability;

import java.util.List;

/**
 * One way in which the tip swings in one direction.
 *
 * @param frequency natural, rad/s
 * @param damping as a share of the critical
 * @param stiffness at the tip, N/mm
 */
public record Mode(double frequency, double damping, double stiffness) implements Receptance {
    public Mode {
        if (!(frequency > 0 && damping > 0 && damping < 1 && stiffness > 0) || Double.isInfinite(frequency)) {
            throw new IllegalArgumentException("A mode has a frequency above 0 rad/s, a damping between 0 and 1 and a"
                    + " stiffness above 0 N/mm, not " + frequency + ", " + damping + ", " + stiffness + ".");
        }
    }

    public static Mode ofHertz(double hertz, double damping, double stiffness) {
        return new Mode(2 * Math.PI * hertz, damping, stiffness);
    }

    public double hertz() {
        return frequency / (2 * Math.PI);
    }

    public Mode withDamping(double share) {
        return new Mode(frequency, share, stiffness);
    }

    public Mode withStiffness(double newtonsPerMm) {
        return new Mode(frequency, damping, newtonsPerMm);
    }

    @Override
    public double real(double shaken) {
        double r = shaken / frequency;
        double s = 1 - r * r;
        return s / (stiffness * (s * s + 4 * damping * damping * r * r));
    }

    @Override
    public double imaginary(double shaken) {
        double r = shaken / frequency;
        double s = 1 - r * r;
        return -2 * damping * r / (stiffness * (s * s + 4 * damping * damping * r * r));
    }

    @Override
    public List<Resonance> resonances() {
        return List.of(new Resonance(frequency, damping));
    }
}
