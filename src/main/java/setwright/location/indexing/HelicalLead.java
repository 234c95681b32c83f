package setwright.location.indexing;

import static setwright.quantity.Symbol.symbol;

import java.util.Comparator;
import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Procedure;
import setwright.quantity.Rational;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** The table screw geared to the dividing head, so that the work turns as it is fed. */
public final class HelicalLead {
    /** What equal gears give: one turn of the work in this much feed. */
    public static final Formula MACHINE_LEAD = new Formula(
            "Lm = R p",
            symbol("Lm", "lead of the machine", Unit.MM, 0, 1000),
            List.of(
                    symbol("R", "worm ratio", Unit.NONE, 5, 120),
                    symbol("p", "lead of the table screw", Unit.MM, 2, 10)),
            v -> v[0] * v[1],
            Source.of("note on helical milling: 40 × 5 mm = 200 mm; 40 × 1/4 in = 10 in (common practice)"));

    /** How far the table is swivelled for a cutter that runs in the groove. */
    public static final Formula SWIVEL = new Formula(
            "β = arctan(π D / L)",
            symbol("β", "swivel of the table", Unit.DEG, 0, 90),
            List.of(
                    symbol("D", "diameter at which the angle is meant", Unit.MM, 1, 500),
                    symbol("L", "lead", Unit.MM, 1, 5000)),
            v -> StrictMath.atan2(Math.PI * v[0], v[1]),
            Source.of("Rose, Modern Machine-Shop Practice (1887-8), helix rule (bitlit.ru)"));

    public static final Procedure NEAREST = new Procedure(
            "nearest lead of the gears",
            List.of(
                    "L / Lm = gear on the worm × second on the stud / (first on the stud × gear on the screw)",
                    "every train of two and of four gears that can be made of those owned; the nearest lead"),
            Unit.MM,
            Source.of("Practical Treatise on Milling and Milling Machines (1914) p. 63 (en.wikisource.org, djvu/69)"));

    /**
     * A train and the lead that it gives.
     *
     * @param train from the screw (driver) to the worm (driven)
     */
    public record Lead(Rational lead, GearTrain train) {}

    private HelicalLead() {}

    /**
     * The lead nearest to the one wanted; of equals two gears, then the sizes that lie nearest.
     *
     * @param machineLead in the unit of the lead wanted
     */
    public static Lead nearest(Rational wanted, Rational machineLead, GearTrains trains) {
        return trains.byRatio().entrySet().stream()
                .map(entry -> new Lead(
                        machineLead.over(entry.getKey()), entry.getValue().get(0)))
                .min(Comparator.comparing(found -> off(found.lead(), wanted)))
                .orElseThrow(() -> new IllegalArgumentException("No train can be made of these gears."));
    }

    private static Rational off(Rational lead, Rational wanted) {
        Rational off = lead.minus(wanted);
        return off.signum() < 0 ? off.negate() : off;
    }

    /** The gear on the spindle in place of the worm: the lead is so many times shorter. */
    public static Rational onSpindle(Rational lead, int ratio) {
        return lead.over(Rational.of(ratio));
    }
}
