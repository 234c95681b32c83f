package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** What a strap's own steel bears, how far it leans, and what a toggle bears at another reach; N and mm. */
public final class StrapStress {
    /** At the hole or slot of the stud, where the strap bends most. */
    public static final Formula BENDING = new Formula(
            "σ = 6 W a / ((w - s) t^2)",
            symbol("σ", "bending at the stud", Unit.N_PER_MM2, 0, 1e5),
            List.of(
                    symbol("W", "force on the work", Unit.N, 0, 1e5),
                    symbol("a", "work to stud", Unit.MM, 1, 200),
                    symbol("w", "width of the strap", Unit.MM, 31, 80),
                    symbol("s", "width of its slot", Unit.MM, 5, 30),
                    symbol("t", "thickness of the strap", Unit.MM, 5, 60)),
            a -> bending(a[0], a[1], a[2], a[3], a[4]),
            Source.of("computed: a beam on what its slot leaves"));

    public static final Formula LEAN = new Formula(
            "α = arctan(o / l)",
            symbol("α", "lean of the strap", Unit.RAD, -1, 1),
            List.of(symbol("o", "heel over work", Unit.MM, -20, 20), symbol("l", "work to heel", Unit.MM, 30, 500)),
            a -> lean(a[0], a[1]),
            Source.of("computed"));

    /** What a toggle that is rated at one reach of its arm bears at another. */
    public static final Formula AT_REACH = new Formula(
            "F = R r / x",
            symbol("F", "force borne", Unit.N, 0, 1e6),
            List.of(
                    symbol("R", "force it is rated for", Unit.N, 0, 1e5),
                    symbol("r", "reach at which it is rated", Unit.MM, 5, 300),
                    symbol("x", "reach", Unit.MM, 5, 300)),
            a -> a[0] * a[1] / a[2],
            Source.of("Clamping handbook p. 335: holding capacity by moment"));

    private StrapStress() {}

    public static double bending(double work, double toStud, double width, double slot, double thick) {
        return 6 * work * toStud / ((width - slot) * thick * thick);
    }

    public static double lean(double heelOver, double span) {
        return StrictMath.atan(heelOver / span);
    }
}
