package setwright.batch;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import java.util.OptionalDouble;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** The time of a batch in each order of working it; seconds. */
public final class BatchTime {
    private static final Symbol PARTS = symbol("N", "parts", Unit.NONE, 2, 10_000);
    private static final Symbol TOOLS = symbol("K", "tools", Unit.NONE, 2, 100);
    private static final Symbol CHANGE = symbol("t", "tool change", Unit.MINUTE, 0.05, 10);
    private static final Symbol LOAD = symbol("L", "load and unload", Unit.MINUTE, 0.05, 60);
    private static final Symbol CUT = symbol("C", "cutting a part", Unit.MINUTE, 0.1, 600);
    private static final Symbol SET_UP = symbol("S", "set-up", Unit.MINUTE, 0, 1000);
    private static final List<Symbol> INPUTS = List.of(PARTS, TOOLS, CHANGE, LOAD, CUT, SET_UP);
    private static final Source COMMON = Source.of("common practice: set-up, loads, cuts and tool changes added up");

    /** Each part is completed before the next is loaded. */
    public static final Formula EACH_PART_COMPLETE = new Formula(
            "T = S + N (C + L) + N K t", total("each part complete"), INPUTS, v -> eachPartComplete(batch(v)), COMMON);
    /** Every other part takes the tools in reversed order, where the order is free. */
    public static final Formula REVERSING_ORDER = new Formula(
            "T = S + N (C + L) + (N (K - 1) + 1) t",
            total("order reversed on every other part"),
            INPUTS,
            v -> reversingOrder(batch(v)),
            COMMON);
    /** Each tool goes through all parts, which are loaded once for each. */
    public static final Formula ONE_TOOL_THROUGH_BATCH = new Formula(
            "T = S + N C + N K L + K t",
            total("one tool through the batch"),
            INPUTS,
            v -> oneToolThroughBatch(batch(v)),
            COMMON);
    /** Below this load time one tool through the batch is quicker than each part complete. */
    public static final Formula SWITCH_POINT = new Formula(
            "L = t K (N - 1) / (N (K - 1))",
            symbol("L", "load time where both orders take alike", Unit.MINUTE, 0, 20),
            List.of(PARTS, TOOLS, CHANGE),
            v -> switchPoint(v[0], v[1], v[2]),
            COMMON);
    /** One set-up and one time for every part. */
    public static final Formula PLAIN = new Formula(
            "T = S + N C",
            total("batch"),
            List.of(SET_UP, PARTS, CUT),
            v -> plain(v[0], v[1], v[2]),
            Source.of("Kusar, Berlec, Zefran, Starbek 2010, Reduction of Machine Setup Time, eq. (1)"
                    + " (dlib.si/stream/URN:NBN:SI:DOC-TTUONFIC/8dddddbf-8eab-4a25-b663-6c8b94dc8e38/TEXT)"));

    private BatchTime() {}

    public static double eachPartComplete(Batch b) {
        return b.setUp() + b.parts() * (b.cut() + b.load()) + b.parts() * b.tools() * b.toolChange();
    }

    public static double reversingOrder(Batch b) {
        return b.setUp() + b.parts() * (b.cut() + b.load()) + (b.parts() * (b.tools() - 1) + 1) * b.toolChange();
    }

    public static double oneToolThroughBatch(Batch b) {
        return b.setUp() + b.parts() * b.cut() + b.parts() * b.tools() * b.load() + b.tools() * b.toolChange();
    }

    /** The load time below which one tool through the batch is quicker; for two tools or more. */
    public static double switchPoint(double parts, double tools, double toolChange) {
        return toolChange * tools * (parts - 1) / (parts * (tools - 1));
    }

    /** The switch point of a batch; empty for one tool, where no load time makes a difference. */
    public static OptionalDouble switchPoint(Batch b) {
        return b.tools() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(switchPoint(b.parts(), b.tools(), b.toolChange()));
    }

    public static double plain(double setUp, double parts, double each) {
        return setUp + parts * each;
    }

    private static Batch batch(double[] v) {
        return new Batch(v[0], v[1], v[2], v[3], v[4], v[5]);
    }

    private static Symbol total(String name) {
        return symbol("T", "time of the batch, " + name, Unit.MINUTE, 0, 1e8);
    }
}
