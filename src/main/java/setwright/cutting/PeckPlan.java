package setwright.cutting;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/** How far a drill goes before it comes out to clear its chips, mm. */
public final class PeckPlan {
    public static final Table RULE = new Table(
            "pecks",
            "three diameters in one go, then two, then one at a time",
            Unit.MM,
            Source.of("common practice: chips of a plain drill pack from about three diameters on"));

    private static final List<Double> DIAMETERS = List.of(3.0, 2.0);

    /** What is left of less than this share of the diameter goes with the peck before it. */
    private static final double REST = 0.5;

    private PeckPlan() {}

    /** The depths at which it comes out, the whole depth last: one depth only where nothing has to be cleared before. */
    public static List<Double> depths(double diameter, double whole) {
        List<Double> found = new ArrayList<>();
        double depth = 0;
        for (int i = 0; depth + step(i, diameter) < whole - REST * diameter; i++) {
            depth += step(i, diameter);
            found.add(depth);
        }
        found.add(whole);
        return List.copyOf(found);
    }

    private static double step(int peck, double diameter) {
        return diameter * (peck < DIAMETERS.size() ? DIAMETERS.get(peck) : 1);
    }
}
