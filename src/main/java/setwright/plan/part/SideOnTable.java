package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnSetUp;
import setwright.job.Job;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.quantity.Angle;
import setwright.quantity.Typed;

/**
 * The side that is up, as it lies on the table. On the side places count from its middle, u to the right and v up, mm.
 *
 * @param onTable from the side to the table
 * @param sizeU nominal size of the side along u
 * @param sizeV nominal size along v
 */
record SideOnTable(PlanMap onTable, double sizeU, double sizeV) {
    static SideOnTable of(DrawnSetUp setUp, Heights heights, Job job) {
        Lying lying = Lying.of(job.plan().blank().envelope(), setUp.up().value(), setUp.quarterTurns());
        boolean turned = setUp.quarterTurns() % 2 != 0;
        double u = (turned ? lying.across() : lying.along()).nominal().inside();
        double v = (turned ? lying.along() : lying.across()).nominal().inside();
        PlanMap map = PlanMap.quarterTurns(setUp.quarterTurns())
                .then(PlanMap.shift((heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2));
        return new SideOnTable(map, u, v);
    }

    /** The middle of a feature. */
    Point2 place(Placed placed) {
        Point2 stated = new Point2(placed.u().inside(), placed.v().inside());
        return fromMiddle(placed.from(), stated);
    }

    Point2 fromMiddle(Pattern.Datum from, Point2 stated) {
        return HolePlaces.fromMiddle(from, stated, sizeU, sizeV);
    }

    /** The motion that sets what lies along u about the origin where a feature is; by default it runs along u. */
    PlanMap set(Placed placed) {
        Point2 middle = place(placed);
        double angle =
                Optional.ofNullable(placed.angle()).map(SideOnTable::inside).orElse(0.0);
        return PlanMap.turn(angle).then(PlanMap.shift(middle.x(), middle.y()));
    }

    private static double inside(Typed<Angle> angle) {
        return angle.inside();
    }

    /** The four corners of the side, anticlockwise from the lower left. */
    List<Point2> corners() {
        return List.of(
                new Point2(-sizeU / 2, -sizeV / 2),
                new Point2(sizeU / 2, -sizeV / 2),
                new Point2(sizeU / 2, sizeV / 2),
                new Point2(-sizeU / 2, sizeV / 2));
    }
}
