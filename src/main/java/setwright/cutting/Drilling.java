package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * Thrust and torque of drills. The handbook form sizes the hold-down of plain drills. The kc form is a second opinion on
 * the torque; its usual rule for the thrust holds for thinned carbide points and is two to three times too low for plain
 * high-speed steel drills, so that it is left out. The tool-maker's form is a third opinion. Kernels in mm, N, N·mm.
 */
public final class Drilling {
    private static final Source HANDBOOK = Source.of("Machinery's Handbook 31st ed. p.1152, metric form");
    private static final Source MAKER =
            Source.of("tool-maker general catalogue 2020-21, technical reference 'drilling tools' p.L068");
    private static final Symbol DIAMETER = symbol("D", "drill diameter", Unit.MM, 0.5, 60);
    private static final Symbol FEED = symbol("f", "feed per turn", Unit.MM_PER_REV, 0.01, 1.25);
    private static final Symbol WORK_FACTOR = symbol("Kd", "work-material factor of drilling", Unit.NONE, 2000, 50000);
    private static final Symbol WEAR = symbol("W", "wear factor", Unit.NONE, 1, 2);
    private static final Symbol THRUST_N = symbol("T", "thrust", Unit.N, 1, 100000);
    private static final Symbol TORQUE_NM = symbol("M", "torque", Unit.N_M, 0.001, 2000);
    private static final Symbol MAKER_FACTOR = symbol("K", "work-material factor of the tool-maker", Unit.NONE, 0.5, 5);
    private static final Symbol POINT = symbol("σ", "point angle", Unit.DEG, 60, 150);

    public static final Formula THRUST = new Formula(
            "T = 0.05 Kd f^0.8 D^0.8 B W + 0.007 Kd D^2 J W",
            THRUST_N,
            List.of(
                    WORK_FACTOR,
                    FEED,
                    DIAMETER,
                    symbol("B", "chisel factor of thrust", Unit.NONE, 0, 2),
                    symbol("J", "web factor of thrust", Unit.NONE, 0, 0.2),
                    WEAR),
            a -> thrust(new Drill(a[2], a[1], a[5]), new ChiselFactors(1, a[3], a[4]), a[0]),
            HANDBOOK);

    public static final Formula TORQUE = new Formula(
            "M = Kd f^0.8 D^1.8 A W / 40000",
            TORQUE_NM,
            List.of(WORK_FACTOR, FEED, DIAMETER, symbol("A", "chisel factor of torque", Unit.NONE, 0, 2), WEAR),
            a -> torque(new Drill(a[2], a[1], a[4]), a[3], a[0]),
            HANDBOOK);

    /** On either lip. */
    public static final Formula SPECIFIC_FORCE = new Formula(
            "kc = kc1.1 / (f sin(σ / 2) / 2)^mc",
            symbol("kc", "specific cutting force", Unit.N_PER_MM2, 100, 20000),
            List.of(
                    symbol("kc1.1", "specific cutting force at 1 mm", Unit.N_PER_MM2, 300, 5000),
                    symbol("mc", "exponent of the specific force", Unit.NONE, 0, 0.5),
                    FEED,
                    POINT),
            a -> specificForce(new Kienzle(a[0], a[1]), a[2], a[3]),
            Source.of("computed: kc at the chip of one lip, f / 2 sin(σ / 2)"));

    /** Of two lips from the pilot out; the chisel edge is not seen. */
    public static final Formula TORQUE_BY_KC = new Formula(
            "M = (D^2 - d^2) f kc K / 8000",
            TORQUE_NM,
            List.of(
                    DIAMETER,
                    symbol("d", "pilot hole", Unit.MM, 0, 60),
                    FEED,
                    symbol("kc", "specific cutting force", Unit.N_PER_MM2, 100, 20000),
                    symbol("K", "correction", Unit.NONE, 0.5, 3)),
            a -> torqueByKc(new Ring(a[0], a[1]), a[2], a[3] * a[4]),
            Source.of("common practice: D² f kc / 8000, the form of tool-makers' power rule D f vc kc / 240000"));

    public static final Formula MAKER_THRUST = new Formula(
            "T = 570 K D f^0.85",
            THRUST_N,
            List.of(MAKER_FACTOR, DIAMETER, FEED),
            a -> makerThrust(a[0], a[1], a[2]),
            MAKER);

    public static final Formula MAKER_TORQUE = new Formula(
            "M = K D^2 (0.63 + 16.84 f) / 100",
            TORQUE_NM,
            List.of(MAKER_FACTOR, DIAMETER, FEED),
            a -> makerTorque(a[0], a[1], a[2]),
            MAKER);

    public static final Formula MAKER_POWER = new Formula(
            "P = K D^2 n (0.647 + 17.29 f) / 1000000",
            symbol("P", "power at the cutter", Unit.KW, 0.001, 100),
            List.of(MAKER_FACTOR, DIAMETER, FEED, symbol("n", "spindle speed", Unit.RPM, 10, 30000)),
            a -> makerPower(a[0], a[1], a[2], a[3]),
            MAKER);

    private Drilling() {}

    /** Diameter mm, feed per turn mm, wear factor. */
    public record Drill(double diameter, double feed, double wear) {}

    /** What is cut away: from the hole that is there to the new diameter, mm. */
    public record Ring(double diameter, double hole) {}

    /** Handbook load of a drill in a material of the given work factor Kd. */
    public static DrillLoad load(DrillCut cut, double workFactor) {
        var drill = new Drill(cut.diameter(), cut.feed(), cut.wear());
        ChiselFactors chisel = cut.chisel();
        return new DrillLoad(thrust(drill, chisel, workFactor), torque(drill, chisel.torque(), workFactor));
    }

    /** Torque by the specific force of the material, N·mm: a second opinion. */
    public static double torqueByKc(DrillCut cut, Kienzle material, double pointAngle) {
        double kc = specificForce(material, cut.feed(), pointAngle);
        return torqueByKc(new Ring(cut.diameter(), cut.pilot()), cut.feed(), kc * cut.wear());
    }

    public static double thrust(Drill drill, ChiselFactors chisel, double workFactor) {
        double lips = 0.05 * feedFactor(drill.feed()) * thrustFactor(drill.diameter()) * chisel.lips();
        double web = 0.007 * drill.diameter() * drill.diameter() * chisel.web();
        return workFactor * drill.wear() * (lips + web);
    }

    public static double torque(Drill drill, double chiselFactor, double workFactor) {
        double perFactor = feedFactor(drill.feed()) * torqueFactor(drill.diameter()) * chiselFactor / 40;
        return workFactor * drill.wear() * perFactor;
    }

    /** Ff. */
    public static double feedFactor(double feed) {
        return StrictMath.pow(feed, 0.8);
    }

    /** FT. */
    public static double thrustFactor(double diameter) {
        return StrictMath.pow(diameter, 0.8);
    }

    /** FM. */
    public static double torqueFactor(double diameter) {
        return StrictMath.pow(diameter, 1.8);
    }

    public static double specificForce(Kienzle material, double feed, double pointAngle) {
        return material.specificForce(feed / 2 * StrictMath.sin(pointAngle / 2));
    }

    public static double torqueByKc(Ring ring, double feed, double specificForce) {
        double squares = ring.diameter() * ring.diameter() - ring.hole() * ring.hole();
        return squares * feed * specificForce / 8;
    }

    public static double makerThrust(double makerFactor, double diameter, double feed) {
        return 570 * makerFactor * diameter * StrictMath.pow(feed, 0.85);
    }

    public static double makerTorque(double makerFactor, double diameter, double feed) {
        return 10 * makerFactor * diameter * diameter * (0.63 + 16.84 * feed);
    }

    /** W at rad/s. */
    public static double makerPower(double makerFactor, double diameter, double feed, double spindleSpeed) {
        double turnsPerMinute = Unit.RPM.fromInside(spindleSpeed);
        return makerFactor * diameter * diameter * turnsPerMinute * (0.647 + 17.29 * feed) / 1000;
    }
}
