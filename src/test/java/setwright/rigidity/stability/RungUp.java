package setwright.rigidity.stability;

/**
 * A tip that is struck once and left to ring in the cut, followed in time: leapfrog in small equal steps with the swing of
 * the tooth before read from memory. Nothing is shared with the code under test but the cut and the modes.
 */
record RungUp(ToothCut cut, Mode x, Mode y, double speed, double depth) {
    private static final int TEETH = 160;
    private static final int SETTLED = 60;

    /** By how much the largest swing grows from tooth to tooth, over the last hundred of them. */
    double growth() {
        double period = cut.period(speed);
        double waves = Math.max(x.frequency(), y.frequency()) * period / (2 * Math.PI);
        int steps = (int) Math.ceil(400 + 300 * waves);
        double length = period / steps;
        double[] oldX = new double[steps];
        double[] oldY = new double[steps];
        double px = 0;
        double py = 0;
        double vx = 1;
        double vy = 1;
        double early = 0;
        double late = 0;
        for (int tooth = 0; tooth < TEETH; tooth++) {
            double largest = 0;
            for (int i = 0; i < steps; i++) {
                double fx = 0;
                double fy = 0;
                for (int j = 0; j < cut.teeth(); j++) {
                    double at = cut.pitch() * ((i + 0.5) / steps + j);
                    if (at > cut.arc().start() && at < cut.arc().exit()) {
                        double thicker = (px - oldX[i]) * Math.sin(at) + (py - oldY[i]) * Math.cos(at);
                        double tangential = cut.specific() * depth * thicker;
                        double radial = cut.radialRatio() * tangential;
                        fx -= tangential * Math.cos(at) + radial * Math.sin(at);
                        fy += tangential * Math.sin(at) - radial * Math.cos(at);
                    }
                }
                oldX[i] = px;
                oldY[i] = py;
                vx = kicked(x, px, vx, fx, length);
                vy = kicked(y, py, vy, fy, length);
                px += length * vx;
                py += length * vy;
                largest = Math.max(largest, Math.max(size(x, px, vx), size(y, py, vy)));
            }
            if (tooth >= SETTLED - 10 && tooth < SETTLED) {
                early = Math.max(early, largest);
            }
            if (tooth >= TEETH - 10) {
                late = Math.max(late, largest);
            }
            if (largest > 1e200 || largest < 1e-200) {
                return largest > 1 ? Double.POSITIVE_INFINITY : 0;
            }
        }
        return Math.pow(late / early, 1.0 / (TEETH - SETTLED));
    }

    private static double kicked(Mode mode, double place, double speed, double force, double length) {
        double w = mode.frequency();
        double drag = mode.damping() * w * length;
        return (speed * (1 - drag) + length * w * w * (force / mode.stiffness() - place)) / (1 + drag);
    }

    private static double size(Mode mode, double place, double speed) {
        return Math.hypot(place, speed / mode.frequency());
    }
}
