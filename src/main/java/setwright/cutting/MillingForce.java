package setwright.cutting;

import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The force of a milling cut over the turn of the cutter: every edge that is in the cut, each slice of it lagging
 * behind the tip by the helix, h = fz cos λ sin φ, with the force law of the edge.
 *
 * <p>Validity: circular path of the teeth, all teeth alike (no run-out), square corners, steady cut. Where the chip
 * starts from nothing the Kienzle force stays finite; below 0.005 mm an edge rubs rather than cuts.
 *
 * <p>Source: from memory: axes, signs and the sum over edges as in Altintas, Manufacturing Automation; the kc law as in
 * {@link Kienzle#SPECIFIC_FORCE}.
 */
public final class MillingForce {
    private static final List<String> STEPS = List.of(
            "h = fz cos λ sin φ for every edge in the cut, each slice lagging by the helix",
            "tangential kc1.1 h^(1-mc) a millimetre of edge, normal and axial in their ratios",
            "added up over all edges and over the turn of the cutter");
    private static final Source TURN = Source.of(
            "from memory: sum over edges as in Altintas, Manufacturing Automation; kc1.1 and mc after ISO 513 groups");

    public static final Procedure MEAN_TORQUE = new Procedure("torque, mean over a turn", STEPS, Unit.N_M, TURN);
    public static final Procedure PEAK_FORCE = new Procedure("largest side force on the cutter", STEPS, Unit.N, TURN);
    public static final Procedure PEAK_TORQUE = new Procedure("largest torque", STEPS, Unit.N_M, TURN);
    public static final Procedure PEAK_TANGENTIAL =
            new Procedure("largest tangential force of all teeth", STEPS, Unit.N, TURN);
    public static final Procedure PEAK_TOOTH =
            new Procedure("largest tangential force on one tooth", STEPS, Unit.N, TURN);
    public static final Procedure MEAN_FEED_FORCE =
            new Procedure("force along the feed, mean over a turn", STEPS, Unit.N, TURN);
    public static final Procedure MEAN_CROSS_FORCE =
            new Procedure("force across the feed, mean over a turn", STEPS, Unit.N, TURN);
    public static final Procedure MEAN_AXIAL_FORCE =
            new Procedure("force along the axis, mean over a turn", STEPS, Unit.N, TURN);

    /** While the edge stands on the wall. */
    public static final Procedure WALL_FORCE =
            new Procedure("force normal to the wall that is left", STEPS, Unit.N, TURN);

    private static final double NO_LAG = 1e-7;
    private static final double WALL_STEP = StrictMath.toRadians(3);

    private final MillingCut cut;
    private final ChipIntegrals chips;
    private final double start;
    private final double exit;
    private final double lag;

    private MillingForce(MillingCut cut, EdgeForce law) {
        this.cut = cut;
        chips = new ChipIntegrals(cut, law);
        start = cut.engagement().start();
        exit = cut.engagement().exit();
        lag = cut.cutter().lag(cut.axialDepth());
    }

    public static MillingForce of(MillingCut cut, EdgeForce law) {
        return new MillingForce(cut, law);
    }

    /** The force while the tip of a tooth stands at an angle, and the tips of the others a pitch each further on. */
    public CutForce at(double angle) {
        return force(angle, cut.cutter().pitch());
    }

    /** The force on a single tooth while its tip stands at an angle. */
    public CutForce onOneTooth(double angle) {
        return force(angle, 2 * Math.PI);
    }

    /** The mean over a turn: each tooth goes through the whole arc once, whatever its helix. */
    public CutForce mean() {
        double[] sum = new double[ChipIntegrals.PARTS];
        chips.addSum(exit, cut.axialDepth() / cut.cutter().pitch(), sum);
        return asForce(sum);
    }

    public MillingLoad load() {
        var turn = new TurnSearch(this::at, corners(), cut.cutter().pitch());
        var tooth = new TurnSearch(this::onOneTooth, corners(), 2 * Math.PI);
        var peaks = new MillingLoad.Peaks(
                turn.peak(CutForce::resultant),
                turn.peak(CutForce::torque),
                turn.peak(force -> Math.abs(force.feed())),
                turn.peak(force -> Math.abs(force.cross())),
                tooth.peak(CutForce::torque));
        return new MillingLoad(cut, mean(), peaks, turn.points());
    }

    /**
     * The force across the feed while the edges stand on the wall that the cut leaves.
     *
     * @param wall angle of the wall: 0 in a conventional cut, π in a climb cut, either in a slot
     */
    public WallForce onWall(double wall) {
        double tip = Math.min(Math.max(wall, start + TurnSearch.BESIDE), exit - TurnSearch.BESIDE);
        int steps = 1 + (int) (Math.abs(lag) / WALL_STEP);
        double least = at(tip).cross();
        double greatest = least;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double end = at(tip + lag * (i + 1) / steps).cross();
            sum += at(tip + lag * (i + 0.5) / steps).cross();
            least = Math.min(least, end);
            greatest = Math.max(greatest, end);
        }
        return new WallForce(least, sum / steps, greatest);
    }

    /** The angles of a tip at which its edge begins or ceases to touch the arc, or to fill it. */
    private double[] corners() {
        return new double[] {start, exit, start + lag, exit + lag};
    }

    /** The sum over all edges whose tips stand at the angle or any number of periods from it. */
    private CutForce force(double angle, double period) {
        double first = Math.min(start, start + lag);
        double last = Math.max(exit, exit + lag);
        double[] sum = new double[ChipIntegrals.PARTS];
        double tip = angle - period * Math.floor((angle - first) / period);
        for (; tip <= last; tip += period) {
            addEdge(tip, sum);
        }
        return asForce(sum);
    }

    private void addEdge(double tip, double[] sum) {
        if (Math.abs(lag) < NO_LAG) {
            if (tip >= start && tip < exit) {
                chips.addForce(tip, cut.axialDepth(), sum);
            }
            return;
        }
        double from = within(Math.min(tip, tip - lag));
        double to = within(Math.max(tip, tip - lag));
        if (from < to) {
            double scale = cut.axialDepth() / Math.abs(lag);
            chips.addSum(to, scale, sum);
            chips.addSum(from, -scale, sum);
        }
    }

    private double within(double angle) {
        return Math.min(Math.max(angle, start), exit);
    }

    private CutForce asForce(double[] sum) {
        return new CutForce(sum[0], sum[1], sum[2], sum[3] * cut.cutter().radius());
    }
}
