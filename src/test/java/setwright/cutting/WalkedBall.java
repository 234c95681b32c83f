package setwright.cutting;

/**
 * The mean force of a ball nose in a full groove by plain summation over its edge, which runs in a quarter circle, and
 * over half a turn. Written without the code that it checks, the force law apart.
 *
 * @param radius of the ball, mm
 */
record WalkedBall(double radius, double depth, double feed, EdgeForce law) {
    private static final int STEPS = 400;

    /** Feed, cross, axial force in N or torque in N·mm, over a turn of so many teeth. */
    double mean(int part, int teeth) {
        double highest = Math.acos(1 - depth / radius);
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double fromAxis = highest * (i + 0.5) / STEPS;
            for (int k = 0; k < STEPS; k++) {
                double turn = Math.PI * (k + 0.5) / STEPS;
                sum += part(part, fromAxis, turn) * radius * highest / STEPS * Math.PI / STEPS;
            }
        }
        return sum * teeth / (2 * Math.PI);
    }

    /** A millimetre of edge at an angle from the axis of the ball, at an angle of the turn. */
    private double part(int part, double fromAxis, double turn) {
        EdgeForce.Parts edge = law.at(feed * Math.sin(turn) * Math.sin(fromAxis));
        double inward = edge.normal() * Math.sin(fromAxis) + edge.along() * Math.cos(fromAxis);
        return switch (part) {
            case 0 -> -edge.tangential() * Math.cos(turn) - inward * Math.sin(turn);
            case 1 -> edge.tangential() * Math.sin(turn) - inward * Math.cos(turn);
            case 2 -> edge.along() * Math.sin(fromAxis) - edge.normal() * Math.cos(fromAxis);
            default -> edge.tangential() * radius * Math.sin(fromAxis);
        };
    }
}
