package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * The motions of a cut and what they remove. Kernels take spindle speeds in rad/s, speeds and feeds along the table in
 * mm/s, lengths in mm.
 */
public final class SpeedAndFeed {
    private static final Source HANDBOOKS = Source.of(
            "El-Hofy, Fundamentals of Machining Processes p.189;"
                    + " tool-maker technical page p.78; Kalpakjian & Schmid, Manufacturing Engineering and Technology, Ex 24.1");
    private static final Symbol TURNS = symbol("n", "spindle speed", Unit.RPM, 10, 30000);
    private static final Symbol SPEED = symbol("v", "cutting speed", Unit.M_PER_MIN, 1, 1000);
    private static final Symbol DIAMETER = symbol("D", "diameter", Unit.MM, 0.3, 400);
    private static final Symbol TEETH = symbol("z", "teeth", Unit.NONE, 1, 40);
    private static final Symbol FEED = symbol("vf", "feed", Unit.MM_PER_MIN, 1, 10000);
    private static final Symbol PER_TOOTH = symbol("fz", "feed per tooth", Unit.MM_PER_TOOTH, 0.001, 2);
    private static final Symbol PER_TURN = symbol("f", "feed per turn", Unit.MM_PER_REV, 0.005, 5);
    private static final Symbol RATE = symbol("Q", "removal rate", Unit.CM3_PER_MIN, 0.001, 5000);
    private static final Symbol WIDTH = symbol("ae", "width of cut", Unit.MM, 0.01, 400);
    private static final Symbol DEPTH = symbol("ap", "depth of cut", Unit.MM, 0.01, 150);

    public static final Formula SPINDLE_SPEED = new Formula(
            "n = 1000 v / (π D)", TURNS, List.of(SPEED, DIAMETER), a -> spindleSpeed(a[0], a[1]), HANDBOOKS);

    public static final Formula CUTTING_SPEED =
            new Formula("v = π D n / 1000", SPEED, List.of(TURNS, DIAMETER), a -> cuttingSpeed(a[0], a[1]), HANDBOOKS);

    public static final Formula TABLE_FEED = new Formula(
            "vf = n z fz", FEED, List.of(TURNS, TEETH, PER_TOOTH), a -> tableFeed(a[0], a[1], a[2]), HANDBOOKS);

    public static final Formula FEED_PER_TOOTH = new Formula(
            "fz = vf / (n z)", PER_TOOTH, List.of(FEED, TURNS, TEETH), a -> feedPerTooth(a[0], a[1], a[2]), HANDBOOKS);

    /** Feed per turn of a drill or reamer. */
    public static final Formula FEED_PER_TURN =
            new Formula("f = vf / n", PER_TURN, List.of(FEED, TURNS), a -> feedPerTooth(a[0], a[1], 1), HANDBOOKS);

    /** Feed of a drill, tap or reamer along its axis. */
    public static final Formula AXIAL_FEED =
            new Formula("vf = n f", FEED, List.of(TURNS, PER_TURN), a -> tableFeed(a[0], 1, a[1]), HANDBOOKS);

    public static final Formula REMOVAL_RATE = new Formula(
            "Q = ae ap vf / 1000", RATE, List.of(WIDTH, DEPTH, FEED), a -> removalRate(a[0], a[1], a[2]), HANDBOOKS);

    public static final Formula DRILL_REMOVAL_RATE = new Formula(
            "Q = π D^2 vf / 4000",
            RATE,
            List.of(DIAMETER, FEED),
            a -> drillRemovalRate(a[0], a[1]),
            Source.of("Kalpakjian & Schmid Ex 22.2 p.632; P.C. Sharma Ex 15.10 p.630"));

    /** How long a turn of the handle takes where the table is wound by hand. */
    public static final Formula SECONDS_PER_TURN = new Formula(
            "t = 60 p / vf",
            symbol("t", "time for a turn of the handle", Unit.SECOND, 0.1, 600),
            List.of(symbol("p", "travel of a turn of the handle", Unit.MM, 0.5, 20), FEED),
            a -> cuttingTime(a[0], a[1]),
            Source.of("computed: travel over feed"));

    public static final Formula CUTTING_TIME = new Formula(
            "t = l / vf",
            symbol("t", "cutting time", Unit.MINUTE, 0.001, 1000),
            List.of(symbol("l", "travel", Unit.MM, 0.1, 5000), FEED),
            a -> cuttingTime(a[0], a[1]),
            Source.of("Kalpakjian & Schmid Ex 24.1 p.664; P.C. Sharma Ex 4.14 p.221"));

    /** From the first touch to the full width of cut; from half the diameter on it is half the diameter. */
    public static final Formula APPROACH = new Formula(
            "s = √(min(ae, D / 2) (D - min(ae, D / 2)))",
            symbol("s", "approach", Unit.MM, 0.1, 200),
            List.of(WIDTH, DIAMETER),
            a -> approach(a[0], a[1]),
            Source.of("P.C. Sharma, A Textbook of Production Engineering, slab milling"));

    private SpeedAndFeed() {}

    /** n = v / (D / 2): cutting speed mm/s and diameter to rad/s. */
    public static double spindleSpeed(double cuttingSpeed, double diameter) {
        return 2 * cuttingSpeed / diameter;
    }

    public static double cuttingSpeed(double spindleSpeed, double diameter) {
        return spindleSpeed * diameter / 2;
    }

    /** The feed in mm/s of a cutter at rad/s. */
    public static double tableFeed(double spindleSpeed, double teeth, double feedPerTooth) {
        return spindleSpeed / (2 * Math.PI) * teeth * feedPerTooth;
    }

    public static double feedPerTooth(double feed, double spindleSpeed, double teeth) {
        return 2 * Math.PI * feed / (spindleSpeed * teeth);
    }

    /** mm³/s of a rectangular cut. */
    public static double removalRate(double width, double depth, double feed) {
        return width * depth * feed;
    }

    /** mm³/s of a drill in solid work. */
    public static double drillRemovalRate(double diameter, double feed) {
        return Math.PI * diameter * diameter / 4 * feed;
    }

    public static double cuttingTime(double travel, double feed) {
        return travel / feed;
    }

    public static double approach(double width, double diameter) {
        double reached = Math.min(width, diameter / 2);
        return Math.sqrt(reached * (diameter - reached));
    }
}
