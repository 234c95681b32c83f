package setwright.quantity.thread;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** The drill before a forming tap, which pushes the thread up, so that its hole is wider; 100 % of thread is 0.68 P on the diameter. */
public final class FormingDrill {
    private static final Symbol MAJOR = symbol("d", "major diameter", Unit.MM, 1, 100);
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.2, 6);
    private static final Source MAKERS = Source.of("from memory: tap makers' rule for forming taps");
    private static final double HUNDRED_PERCENT = 0.68;

    public static final Formula DIAMETER = new Formula(
            "D = d - 0.0068 P q",
            symbol("D", "hole before a forming tap", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH, symbol("q", "percent of thread", Unit.PERCENT, 40, 100)),
            v -> diameter(v[0], v[1], v[2]),
            MAKERS);

    public static final Formula ENGAGEMENT = new Formula(
            "q = (d - D) / (0.0068 P)",
            symbol("q", "percent of thread", Unit.PERCENT, 0, 120),
            List.of(MAJOR, PITCH, symbol("D", "drill", Unit.MM, 0.5, 100)),
            v -> engagement(v[0], v[1], v[2]),
            MAKERS);

    private FormingDrill() {}

    /** The drill that leaves the engagement asked (0.75 for 75 %). */
    public static double diameter(double major, double pitch, double engagement) {
        return major - HUNDRED_PERCENT * pitch * engagement;
    }

    /** The engagement (0.75 for 75 %) that a drill leaves. */
    public static double engagement(double major, double pitch, double drill) {
        return (major - drill) / (HUNDRED_PERCENT * pitch);
    }
}
