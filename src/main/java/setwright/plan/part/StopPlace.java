package setwright.plan.part;

import setwright.geometry.Body;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.StopAt;
import setwright.plan.Rows;
import setwright.shop.Stop;

/**
 * A stop where it stands, mm on the table.
 *
 * @param name as it is called, for instance {@code left stop}
 * @param touches where it touches the part
 * @param outward from the part into the stop, one long
 */
public record StopPlace(String name, Point2 touches, Point2 outward, double low, double high) {
    /** A stop is drawn as a square bar of this width, mm (common practice). */
    private static final double WIDTH = 12;

    /** A plain pin or bar stands this much under the part's top, mm (common practice). */
    private static final double UNDER_TOP = 5;

    /** The least height of part that a stop touches, mm. */
    private static final double LEAST = 1;

    public static StopPlace of(StopAt stop, Heights heights, Rows rows) {
        double along = stop.along().inside();
        double usual = Math.max(heights.partBottom() + LEAST, heights.finishedTop() - UNDER_TOP);
        double high = rows.row(stop.stop(), Stop.class)
                .map(row -> Math.min(usual, heights.bed() + row.height().inside()))
                .orElse(usual);
        return switch (stop.side()) {
            case LEFT -> at("left stop", heights.left(), heights.front() + along, -1, 0, heights, high);
            case RIGHT -> at("right stop", heights.right(), heights.front() + along, 1, 0, heights, high);
            case LOW -> at("front stop", heights.left() + along, heights.front(), 0, -1, heights, high);
            case HIGH -> at("back stop", heights.left() + along, heights.back(), 0, 1, heights, high);
        };
    }

    private static StopPlace at(String name, double x, double y, int right, int back, Heights heights, double high) {
        return new StopPlace(name, new Point2(x, y), new Point2(right, back), heights.bed(), high);
    }

    Body body() {
        Point2 side = new Point2(-outward.y(), outward.x()).times(WIDTH / 2);
        Point2 corner = touches.minus(side);
        Point2 opposite = touches.plus(side).plus(outward.times(WIDTH));
        return Fixtures.box(name, Role.STOP, corner, opposite, low, high);
    }
}
