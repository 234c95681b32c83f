package setwright.cutting;

/**
 * The force of a milling cut by plain summation: many slices of every tooth at many moments of a turn. Written without
 * the code that it checks, the force law apart.
 */
final class SteppedTurn {
    private static final int MOMENTS = 400;
    private static final int MOMENTS_WITHOUT_HELIX = 20000;
    private static final int SLICES_OF_ARC = 200;

    private final MillingCut cut;
    private final EdgeForce law;
    private final double[] mean = new double[4];
    private final double[] peak = new double[4];
    private double peakResultant;

    SteppedTurn(MillingCut cut, EdgeForce law) {
        this.cut = cut;
        this.law = law;
    }

    /** Sums up a turn, for the means and peaks. */
    SteppedTurn swept() {
        double pitch = 2 * Math.PI / cut.cutter().teeth();
        double active = cut.engagement().arc() + Math.abs(lag(cut.axialDepth()));
        int moments =
                (int) (pitch / Math.min(active, pitch)) * (cut.cutter().helix() == 0 ? MOMENTS_WITHOUT_HELIX : MOMENTS);
        for (int i = 0; i < moments; i++) {
            double[] force = at(pitch * (i + 0.5) / moments, slices());
            compare(force);
            for (int part = 0; part < 4; part++) {
                mean[part] += force[part] / moments;
            }
        }
        for (double corner :
                new double[] {cut.engagement().start(), cut.engagement().exit()}) {
            for (double beside : new double[] {-1e-9, 1e-9}) {
                compare(at(corner + beside, slices()));
                compare(at(corner + lag(cut.axialDepth()) + beside, slices()));
            }
        }
        return this;
    }

    private int slices() {
        double slice = cut.engagement().arc() / SLICES_OF_ARC;
        return 1 + (int) (Math.abs(lag(cut.axialDepth())) / slice);
    }

    private double lag(double height) {
        return height * Math.tan(cut.cutter().helix()) / (cut.cutter().diameter() / 2);
    }

    private void compare(double[] force) {
        for (int part = 0; part < 4; part++) {
            peak[part] = Math.max(peak[part], Math.abs(force[part]));
        }
        peakResultant = Math.max(peakResultant, Math.hypot(force[0], force[1]));
    }

    /** Feed, cross, axial and tangential force, N. */
    double[] at(double angle, int slices) {
        double[] force = new double[4];
        double height = cut.axialDepth() / slices;
        for (int tooth = 0; tooth < cut.cutter().teeth(); tooth++) {
            double tip = angle + 2 * Math.PI * tooth / cut.cutter().teeth();
            for (int i = 0; i < slices; i++) {
                double bottom = tip - lag(i * height);
                double top = tip - lag((i + 1) * height);
                addSlice(Math.min(bottom, top), Math.max(bottom, top), height, force);
            }
        }
        return force;
    }

    /** The part of a slice that stands within the arc, at its middle. */
    private void addSlice(double low, double high, double height, double[] force) {
        double turns = 2 * Math.PI * Math.floor(low / (2 * Math.PI));
        addPart(low - turns, high - turns, height, force);
        addPart(low - turns - 2 * Math.PI, high - turns - 2 * Math.PI, height, force);
    }

    private void addPart(double low, double high, double wholeHeight, double[] force) {
        double from = Math.max(low, cut.engagement().start());
        double to = Math.min(high, cut.engagement().exit());
        double share = high > low ? (to - from) / (high - low) : 1;
        if (share <= 0 || from > to || from >= cut.engagement().exit()) {
            return;
        }
        double phi = (from + to) / 2;
        double height = share * wholeHeight;
        double lead = cut.cutter().leadAngle();
        double edge = height / Math.cos(lead);
        double chip = cut.feedPerTooth() * Math.cos(lead) * Math.max(0, Math.sin(phi));
        EdgeForce.Parts parts = law.at(chip);
        double tangential = parts.tangential() * edge;
        double radial = (parts.normal() * Math.cos(lead) + parts.along() * Math.sin(lead)) * edge;
        force[0] += -tangential * Math.cos(phi) - radial * Math.sin(phi);
        force[1] += tangential * Math.sin(phi) - radial * Math.cos(phi);
        force[2] += (parts.along() * Math.cos(lead) - parts.normal() * Math.sin(lead)) * edge;
        force[3] += tangential;
    }

    double mean(int part) {
        return mean[part];
    }

    double peak(int part) {
        return peak[part];
    }

    double peakResultant() {
        return peakResultant;
    }
}
