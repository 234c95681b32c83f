package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Given;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The specific cutting force of a material: kc = kc1.1 h^-mc.
 *
 * <p>Meant for chips of 0.05 to 1 mm (from memory); below that the true force rises more steeply than this.
 *
 * @param kc11 force on a chip 1 mm wide and 1 mm thick, N/mm²
 * @param mc exponent
 */
public record Kienzle(double kc11, double mc) {
    public static final Formula SPECIFIC_FORCE = new Formula(
            "kc = kc1.1 / h^mc",
            symbol("kc", "specific cutting force", Unit.N_PER_MM2, 100, 20000),
            List.of(
                    symbol("kc1.1", "specific cutting force at 1 mm", Unit.N_PER_MM2, 300, 5000),
                    symbol("mc", "exponent of the specific force", Unit.NONE, 0, 0.5),
                    symbol("h", "chip thickness", Unit.MM, 0.005, 3)),
            a -> specificForce(a[0], a[1], a[2]),
            Source.of("kc1.1 and mc by material group as in the tool-maker catalogue 2022 p.111 (ISO 513, VDI 3323)"));

    /** What a worn edge asks for beyond a sharp one: the pessimistic value of a milling load. */
    public static final Given WORN_EDGE = Given.of(
            "factor of a worn edge", 1.3, Unit.NONE, "from memory: 1.3 for milling and turning with a dull edge");

    public Kienzle {
        if (!(kc11 > 0 && mc >= 0 && mc < 1)) {
            throw new IllegalArgumentException("A specific force has kc1.1 above 0 N/mm² and mc from 0 to below 1, not "
                    + kc11 + " and " + mc + ".");
        }
    }

    /** kc at a chip thickness, N/mm². */
    public double specificForce(double chip) {
        return specificForce(kc11, mc, chip);
    }

    /** Cutting force on each millimetre of edge, kc1.1 h^(1-mc), N/mm; it stays finite as the chip goes to nothing. */
    public double forcePerWidth(double chip) {
        return chip <= 0 ? 0 : kc11 * StrictMath.pow(chip, 1 - mc);
    }

    /** The same material cut by an edge that asks for so many times the force. */
    public Kienzle times(double factor) {
        return new Kienzle(kc11 * factor, mc);
    }

    public static double specificForce(double kc11, double mc, double chip) {
        return kc11 / StrictMath.pow(chip, mc);
    }
}
