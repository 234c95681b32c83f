package setwright.geometry;

import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;

/** A stretch of a move. */
record Stretch(int move, Edge plan, double zFrom, double zTo) {
    static Stretch of(int number, Move move) {
        return new Stretch(number, move.plan(), move.zFrom(), move.zTo());
    }

    double zLow() {
        return Math.min(zFrom, zTo);
    }

    double zHigh() {
        return Math.max(zFrom, zTo);
    }

    double height() {
        return Math.abs(zTo - zFrom);
    }

    boolean isSlanted() {
        return zFrom != zTo && !plan.from().at(plan.to());
    }

    boolean isStraight() {
        return plan.kind() == Edge.Kind.STRAIGHT;
    }

    Point3 from() {
        return Point3.of(plan.from(), zFrom);
    }

    Point3 to() {
        return Point3.of(plan.to(), zTo);
    }

    Point3 at(double share) {
        return Point3.of(plan.at(share), zFrom + share * (zTo - zFrom));
    }

    /** The least radius of a circle to each place of the stretch round the place of its chord with the same share. */
    double bulge() {
        if (isStraight()) {
            return 0;
        }
        Arc arc = (Arc) plan;
        double quarter = StrictMath.sin(Math.abs(arc.sweep()) / 4);
        return 2 * arc.radius() * quarter * quarter;
    }

    /** True where the chord is near enough to be of use. */
    boolean isShort() {
        return isStraight() || Math.abs(((Arc) plan).sweep()) <= Math.PI / 2 + 1e-9;
    }

    Stretch half(double start) {
        double step = zTo - zFrom;
        return new Stretch(move, plan.part(start, start + 0.5), zFrom + start * step, zFrom + (start + 0.5) * step);
    }
}
