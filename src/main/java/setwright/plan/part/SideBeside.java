package setwright.plan.part;

import java.util.Optional;
import setwright.geometry.Attitude;
import setwright.geometry.Heading;
import setwright.geometry.Point3;
import setwright.geometry.Side;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.job.Pattern;
import setwright.job.Placed;

/**
 * A side of the part that stands upright in a set-up, so that a disc under the spindle comes at it level. Places in plan:
 * x along the side and y from its surface into the part, zero at its middle, mm.
 *
 * @param onTable from those places to the table
 * @param attitude how the part lies
 * @param length of the side along x
 * @param deep from this side to the one behind it
 * @param bottom height of the side's lower edge over the table
 * @param top height of its upper edge
 */
record SideBeside(
        PlanMap onTable, Attitude attitude, Side side, double length, double deep, double bottom, double top) {
    private static final double LEVEL = 1e-9;

    /** Empty where the side is up or down. */
    static Optional<SideBeside> of(Laid laid, Side side, Heights heights) {
        Attitude attitude = new Attitude(laid.up(), laid.quarterTurns());
        Heading out = attitude.facing(side);
        if (out.z() != 0 || laid.tilted()) {
            return Optional.empty();
        }
        boolean alongX = out.y() != 0;
        double length = alongX ? heights.length() : heights.depth();
        double deep = alongX ? heights.depth() : heights.length();
        Point2 middle = new Point2((heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2);
        Point2 face = middle.plus(new Point2(out.x() * deep / 2, out.y() * deep / 2));
        PlanMap map = PlanMap.quarterTurns(turns(out)).then(PlanMap.shift(face.x(), face.y()));
        return Optional.of(
                new SideBeside(map, attitude, side, length, deep, heights.partBottom(), heights.finishedTop()));
    }

    private static int turns(Heading out) {
        return switch (out) {
            case MINUS_Y -> 0;
            case PLUS_X -> 1;
            case PLUS_Y -> 2;
            default -> 3;
        };
    }

    double height() {
        return top - bottom;
    }

    /** The middle of a feature: along the side, and its height over the table. */
    Along place(Placed placed) {
        Point3 u = onTable(side.u());
        Point3 v = onTable(side.v());
        boolean uLevel = Math.abs(u.z()) < LEVEL;
        Point2 from = fromMiddle(
                placed.from(),
                new Point2(placed.u().inside(), placed.v().inside()),
                uLevel ? length : height(),
                uLevel ? height() : length);
        Point3 step = u.times(from.x()).plus(v.times(from.y()));
        return new Along(step.x() * onTable.xx() + step.y() * onTable.yx(), (bottom + top) / 2 + step.z());
    }

    private static Point2 fromMiddle(Pattern.Datum from, Point2 stated, double sizeU, double sizeV) {
        return HolePlaces.fromMiddle(from, stated, sizeU, sizeV);
    }

    /** Whether what runs at an angle from the side's u lies level. */
    boolean level(double angle) {
        double rise = StrictMath.cos(angle) * onTable(side.u()).z()
                + StrictMath.sin(angle) * onTable(side.v()).z();
        return Math.abs(rise) < 1e-6;
    }

    private Point3 onTable(Heading part) {
        return attitude.toTable(part.step(1));
    }

    /** @param x along the side from its middle */
    record Along(double x, double height) {}
}
