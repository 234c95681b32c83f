package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/**
 * What straps are laid on, mm on the table.
 *
 * @param part in plan
 * @param on what heels stand on, in plan
 * @param lines Y of the slots that studs go into
 * @param cut areas that are cut from above
 * @param deep those that are more than a skim over the whole face
 * @param through those that go through
 * @param holes through holes of the part that is up, where a bolt could go
 * @param round whether the part is a bar along the table: its crown is pressed on
 */
record StrapGround(
        PlanBox part,
        PlanBox on,
        List<Double> lines,
        List<PlanBox> cut,
        List<PlanBox> deep,
        List<PlanBox> through,
        List<Point2> holes,
        boolean round) {
    /** The pad's middle is this far in from the edge, mm (common practice: 15 to 20). */
    private static final double IN = 18;

    /** Least distance between the part's edge and the middle of a stud, mm (common practice: stud close to the work). */
    private static final double STUD_CLEAR = 14;

    /** Shares of the length at which a strap comes over the front or back edge, best first. */
    private static final List<Double> ALONG = List.of(0.2, 0.8, 0.35, 0.65, 0.5, 0.1, 0.9);

    /** A bolt stands that near to the middle line of its slot, mm. */
    private static final double OVER_SLOT = 2;

    /** Half of what a heel takes. */
    private static final double HEEL = 12;

    /** Every place with room for its heel, ends first. */
    List<StrapSpot> spots() {
        List<StrapSpot> found = new ArrayList<>();
        for (double line : lines) {
            if (line > part.yLow() + 5 && line < part.yHigh() - 5) {
                found.add(end(line, -1));
                found.add(end(line, 1));
            }
        }
        for (double line : lines) {
            if (line <= part.yLow() - STUD_CLEAR || line >= part.yHigh() + STUD_CLEAR) {
                ALONG.forEach(share -> found.add(side(line, part.xLow() + share * part.length())));
            }
        }
        found.removeIf(spot -> spot.room() < spot.toStud() / 2);
        return found;
    }

    /** Against either end over every slot, where the clamp has room to stand. */
    List<StrapSpot> edges(double length) {
        List<StrapSpot> found = new ArrayList<>();
        for (double line : lines) {
            if (line > part.yLow() + 5 && line < part.yHigh() - 5) {
                for (int way : new int[] {-1, 1}) {
                    double edge = way < 0 ? part.xLow() : part.xHigh();
                    double room = way < 0 ? edge - on.xLow() : on.xHigh() - edge;
                    if (room >= length) {
                        found.add(new StrapSpot(new Point2(edge, line), new Point2(way, 0), 0, 0, length));
                    }
                }
            }
        }
        return found;
    }

    /** Through holes of the part that stand over a slot. */
    List<StrapSpot> bolts() {
        return holes.stream()
                .filter(hole -> lines.stream().anyMatch(line -> Math.abs(line - hole.y()) <= OVER_SLOT))
                .map(hole ->
                        new StrapSpot(hole, new Point2(hole.x() < part.middle().x() ? -1 : 1, 0), 0, 0, 0))
                .toList();
    }

    private StrapSpot end(double line, int way) {
        double in = Math.min(IN, part.length() / 4);
        double edge = way < 0 ? part.xLow() : part.xHigh();
        double room = (way < 0 ? edge - on.xLow() : on.xHigh() - edge) - STUD_CLEAR - HEEL;
        return new StrapSpot(new Point2(edge - way * in, line), new Point2(way, 0), in, in + STUD_CLEAR, room);
    }

    private StrapSpot side(double line, double x) {
        int way = line < part.yLow() ? -1 : 1;
        double in = round ? part.depth() / 2 : Math.min(IN, part.depth() / 4);
        double edge = way < 0 ? part.yLow() : part.yHigh();
        double room = (way < 0 ? line - on.yLow() : on.yHigh() - line) - HEEL;
        return new StrapSpot(new Point2(x, edge - way * in), new Point2(0, way), in, in + Math.abs(line - edge), room);
    }
}
