package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * The quill stroke that a hole takes when several tools share one knee height: the longest fixes the height, the shortest
 * has the way down; millimetres.
 *
 * @param longest the longest projection below the nose among the tools that share the height
 * @param shortest the shortest among them
 * @param approach from where feeding starts down to the surface
 * @param depth of the hole at full diameter
 * @param point length of the point or bevel
 * @param overRun beyond that, where the hole goes through
 */
public record QuillUse(double longest, double shortest, double approach, double depth, double point, double overRun) {
    private static final Source COMMON =
            Source.of("common practice: stroke for the difference in projection and the feed");
    private static final Symbol LONGEST = symbol("L", "longest projection", Unit.MM, 100, 300);
    private static final Symbol SHORTEST = symbol("l", "shortest projection", Unit.MM, 10, 100);
    private static final Symbol APPROACH = symbol("a", "approach", Unit.MM, 0, 20);
    private static final Symbol DEPTH = symbol("t", "depth", Unit.MM, 1, 150);
    private static final Symbol POINT = symbol("p", "length of the point", Unit.MM, 0, 20);
    private static final Symbol OVER_RUN = symbol("u", "over-run", Unit.MM, 0, 20);

    public static final Formula STROKE = new Formula(
            "s = (L - l) + a + t + p + u",
            symbol("s", "quill stroke needed", Unit.MM, 0, 500),
            List.of(LONGEST, SHORTEST, APPROACH, DEPTH, POINT, OVER_RUN),
            v -> new QuillUse(v[0], v[1], v[2], v[3], v[4], v[5]).stroke(),
            COMMON);
    public static final Formula DAYLIGHT = new Formula(
            "g = L + k",
            symbol("g", "daylight needed from nose to work", Unit.MM, 0, 500),
            List.of(LONGEST, symbol("k", "clearance to change the tool", Unit.MM, 0, 50)),
            v -> daylight(v[0], v[1]),
            Source.of("common practice: the longest tool sets the knee"));

    /** How far the quill is out when the tool point is at its lowest. */
    public static final Formula OUT = new Formula(
            "q = H - P - b",
            symbol("q", "quill out", Unit.MM, -500, 500),
            List.of(
                    symbol("H", "knee height: nose over table, quill in", Unit.MM, 0, 600),
                    symbol("P", "projection of the tool below the nose", Unit.MM, 0, 300),
                    symbol("b", "lowest tool point over table", Unit.MM, 0, 300)),
            v -> out(v[0], v[1], v[2]),
            Source.of("computed: stack-up from table to nose"));

    public QuillUse {
        if (longest < shortest) {
            throw new IllegalArgumentException(
                    "The longest projection, " + longest + ", is not below the shortest, " + shortest + ".");
        }
    }

    public double stroke() {
        return longest - shortest + approach + depth + point + overRun;
    }

    /** What is left of a quill's stroke; negative where the quill runs out. */
    public double spare(double quillStroke) {
        return quillStroke - stroke();
    }

    /** How far the quill is out; negative where the knee stands too high for the tool. */
    public static double out(double kneeHeight, double projection, double lowest) {
        return kneeHeight - projection - lowest;
    }

    /** The nose over the work that the longest tool asks for. */
    public static double daylight(double longestProjection, double clearance) {
        return longestProjection + clearance;
    }
}
