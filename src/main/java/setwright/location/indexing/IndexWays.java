package setwright.location.indexing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import setwright.quantity.Procedure;
import setwright.quantity.Rational;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Every way in which a head comes to a number of divisions, the least trouble first. */
public final class IndexWays {
    public static final Procedure LEAST_TROUBLE = new Procedure(
            "ways to index",
            List.of(
                    "direct: no crank; then plain: one circle, no gears",
                    "differential: gears, but every move is counted as in plain indexing",
                    "compound: exact without gears, two counts at every move",
                    "last what is not exact: compound in steps, then the nearest hole to the true position"),
            Unit.NONE,
            Source.of("common practice; methods: Practical Treatise on Milling and Milling Machines (1914) p. 50-57"));

    private static final Rational BEYOND = Rational.ONE;

    private IndexWays() {}

    /**
     * The best way of each method.
     *
     * @param direct holes of the direct plate; 0 where the head has none
     */
    public static List<IndexWay> of(int divisions, int direct, IndexHead head) {
        Divisions.require(divisions);
        List<IndexWay> ways = new ArrayList<>();
        if (direct > 0 && direct % divisions == 0) {
            ways.add(exact(
                    IndexWay.Method.DIRECT,
                    spaces(direct / divisions) + " of the " + direct + "-hole direct plate",
                    "worm out of mesh, no crank to count; as true as the plate"));
        }
        PlainIndexing.exact(head.turns(divisions, 1), head).stream()
                .findFirst()
                .ifPresent(move -> ways.add(exact(
                        IndexWay.Method.PLAIN,
                        said(move),
                        "one circle and the sector arms; the worm divides a hole's error by " + head.ratio())));
        DifferentialIndexing.ways(divisions, head).stream()
                .findFirst()
                .ifPresent(way -> ways.add(exact(IndexWay.Method.DIFFERENTIAL, said(way), gears(way))));
        CompoundIndexing.exact(head.turns(divisions, 1), head.plates()).stream()
                .findFirst()
                .ifPresent(way -> ways.add(exact(IndexWay.Method.COMPOUND, said(way), counts(way))));
        if (ways.isEmpty()) {
            near(divisions, head, ways);
        }
        return List.copyOf(ways);
    }

    private static IndexWay exact(IndexWay.Method method, String move, String why) {
        return new IndexWay(method, move, Rational.ZERO, why);
    }

    private static void near(int divisions, IndexHead head, List<IndexWay> ways) {
        CompoundIndexing.nearestInSteps(divisions, head)
                .ifPresent(found -> ways.add(new IndexWay(
                        IndexWay.Method.COMPOUND_IN_STEPS,
                        said(found.move()) + ", each move over " + found.steps() + " divisions",
                        atLast(found.error(), divisions, head),
                        "not exact, and the error grows with every move; small where the steps are well chosen")));
        ways.add(nearestHole(divisions, head));
    }

    private static Rational atLast(Rational error, int divisions, IndexHead head) {
        Rational last = head.degrees(error).times(divisions - 1);
        return last.signum() < 0 ? last.negate() : last;
    }

    /** The circle whose nearest holes lie out least; each position from the list, not from the one before. */
    private static IndexWay nearestHole(int divisions, IndexHead head) {
        int best = 0;
        Rational least = BEYOND;
        for (PlateFace face : head.plates().faces()) {
            for (int circle : face.circles()) {
                Rational worst = new Crank(head.ratio(), circle).worst(divisions);
                if (worst.compareTo(least) < 0) {
                    least = worst;
                    best = circle;
                }
            }
        }
        return new IndexWay(
                IndexWay.Method.NEAREST_HOLE,
                "the nearest hole of the " + best + " circle to every position of the list",
                least.times(360),
                "one circle and no gears; every position is off a little, none adds up");
    }

    public static String said(CrankMove move) {
        String turns = move.turns() == 1 ? "1 turn" : move.turns() + " turns";
        if (move.holes() == 0) {
            return turns;
        }
        String part = spaces(move.holes()) + " of the " + move.circle() + " circle";
        return move.turns() == 0 ? part : turns + " and " + part;
    }

    private static String said(TwoCircles way) {
        return said(move(way.firstHoles(), way.firstCircle(), way))
                + (way.same() ? ", then on by " : ", then back by ")
                + said(move(way.secondHoles(), way.secondCircle(), way));
    }

    private static CrankMove move(long spaces, int circle, TwoCircles way) {
        return new CrankMove(spaces / circle, (int) (spaces % circle), circle, way.plate());
    }

    public static String said(DifferentialWay way) {
        return said(way.move()) + "; gears "
                + way.train().gears().stream().map(String::valueOf).collect(Collectors.joining(", "))
                + " from the spindle to the plate, "
                + (way.idlers() == 0 ? "no idler" : way.idlers() == 1 ? "1 idler" : way.idlers() + " idlers");
    }

    private static String gears(DifferentialWay way) {
        return "exact with " + way.train().gears().size() + " gears; the plate turns "
                + (way.withCrank() ? "with" : "against")
                + " the crank, try it by hand; no helical milling, worm in mesh, spindle level";
    }

    private static String counts(TwoCircles way) {
        return "no gears, but two counts at every move"
                + (way.same() ? ", both the same way" : "; the second goes back, so take the backlash up again");
    }

    private static String spaces(long holes) {
        return holes == 1 ? "1 space" : holes + " spaces";
    }
}
