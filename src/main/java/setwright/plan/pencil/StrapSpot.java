package setwright.plan.pencil;

import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.plan.part.StrapPlace;

/**
 * A place where a strap could press, mm on the table.
 *
 * @param toward from the pad to the heel, one long, along an axis of the table
 * @param toEdge from the pad to the edge of the part
 * @param toStud from the pad to the stud
 * @param room for the heel beyond the stud
 */
record StrapSpot(Point2 pad, Point2 toward, double toEdge, double toStud, double room) {
    /** Half the width that a strap needs on the part, mm (common practice). */
    private static final double HALF_WIDTH = 20;

    /** Half of what a block under the pad takes. */
    private static final double BLOCK = 40;

    /** What the strap covers of the part. */
    PlanBox covers() {
        Point2 side = new Point2(-toward.y(), toward.x()).times(HALF_WIDTH);
        Point2 nose = pad.minus(toward.times(StrapPlace.NOSE)).minus(side);
        Point2 edge = pad.plus(toward.times(toEdge)).plus(side);
        return PlanBox.of(nose, edge);
    }

    PlanBox blockUnder() {
        return PlanBox.of(pad, pad).grown(BLOCK);
    }

    boolean clearOf(List<PlanBox> areas, double by) {
        return areas.stream().noneMatch(area -> area.grown(by).gap(covers()) <= 0);
    }

    boolean leavesOpen(List<PlanBox> through) {
        return through.stream().noneMatch(area -> area.gap(blockUnder()) <= 0);
    }

    /** Direction to the heel, rad: 0 to the right, anticlockwise. */
    double angle() {
        double angle = StrictMath.atan2(toward.y(), toward.x());
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }
}
