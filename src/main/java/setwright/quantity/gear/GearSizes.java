package setwright.quantity.gear;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Diameters and depths of a spur or helical gear by its module; the module of P teeth an inch is 1 in / P. */
public final class GearSizes {
    private static final double TWO_THOUSANDTHS = 0.0508;
    private static final String MOTT =
            "Mott, Machine Elements in Mechanical Design, 4th ed., table 8-4 p. 314 (fliphtml5.com)";
    private static final Source NAVY = Source.of(
            "Navy manual 14345, appendix III p. AIII-2: 0.6866 of the circular pitch (enginemechanics.tpub.com/14345)");

    private static final Symbol MODULE = symbol("m", "module", Unit.MM, 0.2, 20);
    private static final Symbol TEETH = symbol("N", "teeth", Unit.NONE, 6, 400);
    private static final Symbol HELIX = symbol("β", "helix angle", Unit.DEG, 1, 60);
    private static final Symbol DEPTH = symbol("h", "whole depth", Unit.MM, 0, 100);

    public static final Formula OUTSIDE = new Formula(
            "Da = (N + 2) m",
            symbol("Da", "outside diameter", Unit.MM, 1, 5000),
            List.of(TEETH, MODULE),
            v -> (v[0] + 2) * v[1],
            Source.of(MOTT));

    public static final Formula PITCH = new Formula(
            "D = N m",
            symbol("D", "pitch diameter", Unit.MM, 1, 5000),
            List.of(TEETH, MODULE),
            v -> v[0] * v[1],
            Source.of(MOTT));

    /** 14 1/2 degrees, full depth. */
    public static final Formula DEPTH_14_5 =
            new Formula("h = 2.157 m", DEPTH, List.of(MODULE), v -> 2.157 * v[0], NAVY);

    /** 20 degrees: by module, or coarser than 20 teeth an inch. */
    public static final Formula DEPTH_20 =
            new Formula("h = 2.25 m", DEPTH, List.of(MODULE), v -> 2.25 * v[0], Source.of(MOTT));

    /** 20 degrees, 20 teeth an inch and finer. */
    public static final Formula DEPTH_FINE = new Formula(
            "h = 2.2 m + 0.0508",
            DEPTH,
            List.of(MODULE),
            v -> 2.2 * v[0] + TWO_THOUSANDTHS,
            Source.of(MOTT + ": 2.2 / P + 0.002 in"));

    public static final Formula HELICAL_PITCH = new Formula(
            "D = N m / cos(β)",
            symbol("D", "pitch diameter", Unit.MM, 1, 5000),
            List.of(TEETH, MODULE, HELIX),
            v -> v[0] * v[1] / StrictMath.cos(v[2]),
            Source.of("common practice: the normal module is that of the cutter"));

    public static final Formula HELICAL_OUTSIDE = new Formula(
            "Da = D + 2 m",
            symbol("Da", "outside diameter", Unit.MM, 1, 5000),
            List.of(symbol("D", "pitch diameter", Unit.MM, 1, 5000), MODULE),
            v -> v[0] + 2 * v[1],
            Source.of(MOTT));

    public static final Formula LEAD = new Formula(
            "L = π D / tan(β)",
            symbol("L", "lead", Unit.MM, 1, 50_000),
            List.of(symbol("D", "pitch diameter", Unit.MM, 1, 1000), HELIX),
            v -> Math.PI * v[0] / StrictMath.tan(v[1]),
            Source.of("Rose, Modern Machine-Shop Practice (1887-8), helix rule (bitlit.ru)"));

    /** The count of teeth by which the cutter is chosen; the division is by N. */
    public static final Formula VIRTUAL_HELICAL = new Formula(
            "Nv = N / cos(β)^3",
            symbol("Nv", "teeth for the cutter", Unit.NONE, 6, 4000),
            List.of(TEETH, HELIX),
            v -> v[0] / StrictMath.pow(StrictMath.cos(v[1]), 3),
            Source.of("from memory"));

    public static final Formula VIRTUAL_BEVEL = new Formula(
            "Nv = N / cos(γ)",
            symbol("Nv", "teeth for the cutter", Unit.NONE, 6, 4000),
            List.of(TEETH, symbol("γ", "pitch angle", Unit.DEG, 1, 85)),
            v -> v[0] / StrictMath.cos(v[1]),
            Source.of("from memory"));

    private static final double FINE_FROM = 20;
    private static final double STEEP = 17;

    private GearSizes() {}

    /**
     * The rule of the whole depth. The depth that is engraved on a cutter goes before it.
     *
     * @param pressureAngle radians
     * @param diametralPitch teeth to an inch of pitch diameter; 0 for a module gear
     */
    public static Formula depth(double pressureAngle, double diametralPitch) {
        if (StrictMath.toDegrees(pressureAngle) < STEEP) {
            return DEPTH_14_5;
        }
        return diametralPitch >= FINE_FROM * (1 - 1e-12) ? DEPTH_FINE : DEPTH_20;
    }
}
