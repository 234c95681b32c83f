package setwright.drawing;

import java.util.List;
import setwright.geometry.Box;
import setwright.geometry.Point3;
import setwright.geometry.plane.Point2;

/** From where one looks at the set-up; the views are laid out so that plan and end view fold out of the front view. */
public enum View {
    /** Along Y from the machinist: X to the right, Z up. */
    FRONT("from the front"),
    /** Along X from the left end of the table: the machinist's side to the right, Z up. */
    SIDE("from the left end"),
    /** Down: X to the right, the column at the top. */
    TOP("from above");

    private final String words;

    View(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The place on the drawing, nothing left out. */
    public Point2 of(Point3 place) {
        return switch (this) {
            case FRONT -> new Point2(place.x(), place.z());
            case SIDE -> new Point2(-place.y(), place.z());
            case TOP -> new Point2(place.x(), place.y());
        };
    }

    /** How far from the eye a place is, growing away from it. */
    double away(Point3 place) {
        return switch (this) {
            case FRONT -> place.y();
            case SIDE -> place.x();
            case TOP -> -place.z();
        };
    }

    /** Across the drawing. */
    double across(Point3 place) {
        return of(place).x();
    }

    double left(Box box) {
        return Math.min(across(box.low()), across(box.high()));
    }

    double right(Box box) {
        return Math.max(across(box.low()), across(box.high()));
    }

    double nearest(Box box) {
        return Math.min(away(box.low()), away(box.high()));
    }

    double farthest(Box box) {
        return Math.max(away(box.low()), away(box.high()));
    }

    /** The views in which a distance that runs this way is seen best, the best first. */
    static List<View> seeing(Point3 direction) {
        double x = Math.abs(direction.x());
        double y = Math.abs(direction.y());
        double z = Math.abs(direction.z());
        if (z >= Math.max(x, y)) {
            return y > x ? List.of(SIDE, FRONT, TOP) : List.of(FRONT, SIDE, TOP);
        }
        return x >= y ? List.of(FRONT, TOP, SIDE) : List.of(SIDE, TOP, FRONT);
    }
}
