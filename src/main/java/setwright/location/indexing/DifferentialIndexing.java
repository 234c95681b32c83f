package setwright.location.indexing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Rational;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The plate geared to the spindle. For one turn of the spindle the crank makes R turns and the plate x, so that R - x is
 * N moves of h spaces on a circle of H: x = R - N h / H.
 */
public final class DifferentialIndexing {
    public static final Procedure DIFFERENTIAL = new Procedure(
            "plate geared to the spindle",
            List.of(
                    "x = R - N h / H turns of the plate for one of the spindle, with the crank where above nought",
                    "x = spindle gear / plate gear, or spindle gear × second driver / (first driven × plate gear)",
                    "two gears before four, then the least x: the plate carries less and tooth errors count less",
                    "turn the crank a few turns and watch which way the plate goes: idlers depend on the head"),
            Unit.NONE,
            Source.of("Practical Treatise on Milling and Milling Machines (1914) p. 54-57"
                    + " (en.wikisource.org, djvu/60 to 63); idlers partly from memory"));

    private static final Comparator<DifferentialWay> LEAST_TROUBLE = Comparator.comparing(
                    (DifferentialWay way) -> !way.train().simple())
            .thenComparing(DifferentialWay::plateLoad)
            .thenComparing(DifferentialWay::idlers)
            .thenComparing(way -> -way.move().circle());

    private DifferentialIndexing() {}

    /** For every circle and every move on it the train that is easiest; the least trouble first. */
    public static List<DifferentialWay> ways(int divisions, IndexHead head) {
        Divisions.require(divisions);
        GearTrains trains = GearTrains.of(head);
        List<DifferentialWay> ways = new ArrayList<>();
        for (PlateFace face : head.plates().faces()) {
            for (int circle : face.circles()) {
                onCircle(divisions, head.ratio(), circle, face.name(), trains, ways);
            }
        }
        return ways.stream().sorted(LEAST_TROUBLE).toList();
    }

    /** All moves for which the plate turns no faster than the gears can drive it. */
    private static void onCircle(
            int divisions, int ratio, int circle, String plate, GearTrains trains, List<DifferentialWay> ways) {
        Rational spaces = Rational.of(circle, divisions);
        Rational most = trains.greatest();
        long last = spaces.times(most.plus(Rational.of(ratio))).floor().longValueExact();
        long before = spaces.times(Rational.of(ratio).minus(most)).floor().longValueExact();
        for (long h = Math.max(1, before); h <= last; h++) {
            Rational x = Rational.of((long) ratio * circle - divisions * h, circle);
            Rational turning = x.signum() < 0 ? x.negate() : x;
            List<GearTrain> found = trains.with(turning);
            if (!found.isEmpty()) {
                CrankMove move = new CrankMove(h / circle, (int) (h % circle), circle, plate);
                ways.add(new DifferentialWay(move, x, found.get(0)));
            }
        }
    }
}
