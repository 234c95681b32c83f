package setwright.quantity.thread;

import static setwright.quantity.Symbol.symbol;

import java.util.Comparator;
import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * The drill before a cutting tap. Percent of thread follows the trade's convention: 100 % is a thread 0.649519 P deep on
 * each side, so the drill is the major diameter less the engagement times 1.299038 P. (The other convention divides by
 * 1.082532 P: the same hole then reads 1.2 times as much.)
 *
 * @param exact the diameter that gives exactly the engagement asked, mm
 * @param drill the listed drill nearest to it
 * @param engagement what that drill gives, as a ratio
 */
public record TapDrill(double exact, Drill drill, double engagement) {
    private static final Symbol MAJOR = symbol("d", "major diameter", Unit.MM, 1, 100);
    private static final Symbol PITCH = symbol("P", "pitch", Unit.MM, 0.2, 6);
    private static final Source TRADE = Source.of("computed: trade rule, 100 % of thread is 1.299038 P on the diameter;"
            + " the percentages printed with the usual tap drills follow it");

    public static final Formula DIAMETER = new Formula(
            "D = d - 1.299038 P q / 100",
            symbol("D", "drill for the thread", Unit.MM, 0, 100),
            List.of(MAJOR, PITCH, symbol("q", "percent of thread", Unit.PERCENT, 40, 100)),
            v -> diameter(v[0], v[1], v[2]),
            TRADE);
    public static final Formula ENGAGEMENT = new Formula(
            "q = 100 (d - D) / (1.299038 P)",
            symbol("q", "percent of thread", Unit.PERCENT, 0, 120),
            List.of(MAJOR, PITCH, symbol("D", "drill", Unit.MM, 0.5, 100)),
            v -> engagement(v[0], v[1], v[2]),
            TRADE);

    private static final double HUNDRED_PERCENT = 1.299038;

    /** A drill by its stamp ({@code 6.8}, {@code #7}, {@code F}, {@code 27/64}) and its diameter in millimetres. */
    public record Drill(String name, double diameter) {}

    /** The drill that leaves the engagement asked (0.75 for 75 %). */
    public static double diameter(double major, double pitch, double engagement) {
        return major - HUNDRED_PERCENT * pitch * engagement;
    }

    /** The engagement (0.75 for 75 %) that a drill leaves. */
    public static double engagement(double major, double pitch, double drill) {
        return (major - drill) / (HUNDRED_PERCENT * pitch);
    }

    /**
     * The drill of a stand nearest to the exact one; of two equally near the larger, which taps easier.
     *
     * @throws IllegalArgumentException where the stand is empty
     */
    public static TapDrill nearest(ScrewThread thread, double engagement, List<Drill> stand) {
        double exact = diameter(thread.major(), thread.pitch(), engagement);
        Drill drill = stand.stream()
                .min(Comparator.<Drill>comparingDouble(d -> Math.abs(d.diameter() - exact))
                        .thenComparing(
                                Comparator.comparingDouble(Drill::diameter).reversed()))
                .orElseThrow(() -> new IllegalArgumentException("There is no drill to choose from."));
        return new TapDrill(exact, drill, engagement(thread.major(), thread.pitch(), drill.diameter()));
    }

    /** The drill that the thread table names; the exact one is taken for the engagement asked. */
    public static TapDrill customary(ThreadRow row, double engagement) {
        ScrewThread thread = row.thread();
        return new TapDrill(
                diameter(thread.major(), thread.pitch(), engagement),
                new Drill(row.tapDrill(), row.tapDrillDiameter()),
                engagement(thread.major(), thread.pitch(), row.tapDrillDiameter()));
    }
}
