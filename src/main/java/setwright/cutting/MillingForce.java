package setwright.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The force of a milling cut over the turn of the cutter: every edge that is in the cut, each slice of it lagging
 * behind the tip by the helix, h = fz cos λ sin φ, with the force law of the edge.
 *
 * <p>Edges that do not stand at one radius are cut into slices, each with its own radius, lead and arc. Teeth that do not
 * stand out alike share the chip as {@link UnevenTeeth} says.
 *
 * <p>Validity: circular path of the teeth, steady cut. Where the chip starts from nothing the Kienzle force stays finite;
 * below 0.005 mm an edge rubs rather than cuts.
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
    public static final Procedure PEAK_RUNNING_OUT =
            new Procedure("largest side force with run-out", STEPS, Unit.N, TURN);
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

    private static final double WALL_STEP = StrictMath.toRadians(3);

    private final MillingCut cut;
    private final List<TurnSlice> slices;
    /** After so much of a turn the force comes round again, rad. */
    private final double period;

    private MillingForce(MillingCut cut, List<TurnSlice> slices, double period) {
        this.cut = cut;
        this.slices = List.copyOf(slices);
        this.period = period;
    }

    /** Of a cutter whose edges stand at one radius, all teeth alike. */
    public static MillingForce of(MillingCut cut, EdgeForce law) {
        TurnSlice whole = new TurnSlice(cut, 0, law, null, ChipIntegrals.FINE);
        return new MillingForce(cut, List.of(whole), cut.cutter().pitch());
    }

    /** Of a cutter of any shape, all teeth alike. */
    public static MillingForce of(ShapedCut shaped, EdgeForce law) {
        return sliced(shaped, law, null);
    }

    /** Of a cutter of any shape whose teeth do not stand out alike. */
    public static MillingForce of(ShapedCut shaped, EdgeForce law, UnevenTeeth teeth) {
        return sliced(shaped, law, teeth.even() ? null : teeth);
    }

    private static MillingForce sliced(ShapedCut shaped, EdgeForce law, @Nullable UnevenTeeth teeth) {
        List<ShapedCut.Slice> slices = shaped.slices();
        int alike = slices.size() == 1 ? ChipIntegrals.FINE : ChipIntegrals.SLICED;
        int cells = teeth == null ? alike : ChipIntegrals.COARSE;
        List<TurnSlice> found = slices.stream()
                .map(slice -> new TurnSlice(slice.cut(), slice.lag(), law, teeth, cells))
                .toList();
        return new MillingForce(
                shaped.whole(), found, teeth == null ? shaped.whole().cutter().pitch() : 2 * Math.PI);
    }

    /** After so much of a turn the force comes round again: a tooth pitch, a whole turn of unlike teeth, rad. */
    public double period() {
        return period;
    }

    /** The force while the tip of the first tooth stands at an angle, and those of the others a pitch each further on. */
    public CutForce at(double angle) {
        double[] sum = new double[ChipIntegrals.PARTS];
        slices.forEach(slice -> slice.addAll(angle, sum));
        return asForce(sum);
    }

    /** The force on a single tooth while its tip stands at an angle; of unlike ones that with the largest chip. */
    public CutForce onOneTooth(double angle) {
        double[] sum = new double[ChipIntegrals.PARTS];
        slices.forEach(slice -> slice.addFirst(angle, sum));
        return asForce(sum);
    }

    /** The mean over a turn. */
    public CutForce mean() {
        double[] sum = new double[ChipIntegrals.PARTS];
        slices.forEach(slice -> slice.addMean(sum));
        return asForce(sum);
    }

    public MillingLoad load() {
        var turn = search();
        var tooth = new TurnSearch(this::onOneTooth, corners(1), 2 * Math.PI);
        var peaks = new MillingLoad.Peaks(
                turn.peak(CutForce::resultant),
                turn.peak(CutForce::torque),
                turn.peak(force -> Math.abs(force.feed())),
                turn.peak(force -> Math.abs(force.cross())),
                tooth.peak(CutForce::torque));
        return new MillingLoad(cut, mean(), peaks, turn.points());
    }

    /** The moment of the largest force in the plane of the table. */
    public TurnPoint largest() {
        return search().peak(CutForce::resultant);
    }

    /**
     * The force across the feed while the edges stand on the wall that the cut leaves.
     *
     * @param wall angle of the wall: 0 in a conventional cut, π in a climb cut, either in a slot
     */
    public WallForce onWall(double wall) {
        double start = cut.engagement().start() + TurnSearch.BESIDE;
        double exit = cut.engagement().exit() - TurnSearch.BESIDE;
        double tip = Math.min(Math.max(wall, start), exit);
        double lag = cut.cutter().lag(cut.axialDepth());
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

    private TurnSearch search() {
        int teeth = (int) Math.round(period / cut.cutter().pitch());
        return new TurnSearch(this::at, corners(teeth), period);
    }

    /** The angles of the first tip at which one of so many edges begins or ceases to touch its arc, or to fill it. */
    private double[] corners(int teeth) {
        return IntStream.range(0, teeth)
                .boxed()
                .flatMapToDouble(tooth -> slices.stream()
                        .flatMapToDouble(slice -> Arrays.stream(slice.corners()))
                        .map(corner -> corner - tooth * cut.cutter().pitch()))
                .toArray();
    }

    private static CutForce asForce(double[] sum) {
        return new CutForce(sum[0], sum[1], sum[2], sum[3]);
    }
}
