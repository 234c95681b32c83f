package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Table;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.shop.CuttingSpeed;
import setwright.shop.IsoGroup;
import setwright.shop.ToolMaterial;

/**
 * The cutting speed of one cut: that of the table, times what differs from the conditions of the table, for the life
 * that is asked of the edge. Kernels take speeds in mm/s and lives in s.
 */
public final class SpeedForCut {
    private static final Symbol FACTOR_OF_KIND = symbol("ko", "factor for the kind of operation", Unit.NONE, 0.3, 1);
    private static final Symbol FACTOR_OF_COOLING =
            symbol("kc", "factor for what is put on the cut", Unit.NONE, 0.5, 1.5);
    private static final Symbol FACTOR_OF_SKIN = symbol("ks", "factor for a face with its skin", Unit.NONE, 0.5, 1);

    /** Taylor's v T^n = C from the life that tables are meant for to the one that is asked. */
    public static final Formula SPEED = new Formula(
            "v = v60 ko kc ks (60 / T)^n",
            symbol("v", "cutting speed", Unit.M_PER_MIN, 1, 3000),
            List.of(
                    symbol("v60", "cutting speed of the table, for a life of 60 min", Unit.M_PER_MIN, 1, 1000),
                    FACTOR_OF_KIND,
                    FACTOR_OF_COOLING,
                    FACTOR_OF_SKIN,
                    symbol("T", "tool life asked", Unit.MINUTE, 5, 600),
                    symbol("n", "exponent of tool life", Unit.NONE, 0.08, 0.5)),
            a -> speed(a[0], a[1] * a[2] * a[3], a[4], a[5]),
            Source.of("Taylor's v T^n = C as in P.C. Sharma, A Textbook of Production Engineering, Ex 14.1 and 14.7;"
                    + " common practice: the factors"));

    public static final Table KIND = new Table(
            "factor for the kind of operation",
            "countersink 0.5; counterbore, spotface, bore 0.75; all others 1",
            Unit.NONE,
            Source.of("common practice: slower where wide edges chatter"));

    public static final Table EXPONENT = new Table(
            "exponent of tool life",
            "high speed steel 0.125, carbide 0.25",
            Unit.NONE,
            Source.of("P.C. Sharma Ex 14.1 (0.125, as of high speed steel) and Ex 14.2 (0.25); from memory: ranges 0.08"
                    + " to 0.2 for high speed steel and 0.2 to 0.5 for carbide"));

    public static final Table SKIN = new Table(
            "factor for a face with its skin",
            "first cut in a cast, hot rolled or flame cut face 0.65, else 1",
            Unit.NONE,
            Source.of("common practice: 0.6 to 0.7 under the skin"));

    /** Of the cutting speed of the table, for a countersink and for other wide edges in a hole. */
    public static final double COUNTERSINK = 0.5;

    public static final double WIDE_EDGE = 0.75;

    /** Of the cutting speed of the table, for the first cut under a skin. */
    public static final double UNDER_SKIN = 0.65;

    private static final double HSS_EXPONENT = 0.125;
    private static final double CARBIDE_EXPONENT = 0.25;

    private SpeedForCut() {}

    /**
     * What of a cut its speed depends on, beside the row of the table.
     *
     * @param kind factor for the kind of operation
     * @param underSkin whether it is the first cut in a face with its skin
     * @param life asked of the edge
     */
    public record Conditions(Worked kind, Cooling cooling, boolean underSkin, Given life) {}

    /** mm/s, at all factors together and a life in s. */
    public static double speed(double ofTable, double factor, double life, double exponent) {
        return ofTable * factor * StrictMath.pow(ToolLife.ASKED / life, exponent);
    }

    /** What an edge lives at a cutting speed, s; the reverse of {@link #speed}. */
    public static double life(double ofTable, double factor, double speed, double exponent) {
        return ToolLife.ASKED * StrictMath.pow(ofTable * factor / speed, 1 / exponent);
    }

    public static Worked of(CuttingSpeed row, IsoGroup work, Conditions on) {
        Given table = Given.of(
                "cutting speed of the table", row.speed().inside(), Unit.M_PER_MIN, "shop/" + row.id() + "/speed");
        return SPEED.of(
                table,
                on.kind(),
                cooling(row.tool(), work, on.cooling()),
                skin(on.underSkin()),
                on.life(),
                exponent(row));
    }

    private static Worked cooling(ToolMaterial tool, IsoGroup work, Cooling cooling) {
        String what = cooling.name().toLowerCase(java.util.Locale.ROOT) + ", " + tool.words() + " in " + work.words();
        return Cooling.FACTOR.of(what, cooling.factor(tool, work));
    }

    private static Worked skin(boolean under) {
        return under ? SKIN.of("first cut under the skin", UNDER_SKIN) : SKIN.of("clean metal", 1);
    }

    /** That of the row, else the usual one of the tool's material. */
    public static Worked exponent(CuttingSpeed row) {
        Typed<?> own = row.lifeExponent();
        return own == null
                ? EXPONENT.of(row.tool().words(), usualExponent(row.tool()))
                : EXPONENT.of("the row " + row.id(), own.inside());
    }

    private static double usualExponent(ToolMaterial tool) {
        return switch (tool) {
            case HSS -> HSS_EXPONENT;
            case CARBIDE -> CARBIDE_EXPONENT;
        };
    }
}
