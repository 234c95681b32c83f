package setwright.geometry;

import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Straight;

/** A stretch of the way of the tool point: straight or round in plan, its height changing evenly along it. */
public record Move(Kind kind, Edge plan, double zFrom, double zTo) {
    public enum Kind {
        /** From clear of the work to where the cut starts. */
        APPROACH,
        CUT,
        /** From where the cut ends until the tool is clear. */
        RUN_OFF,
        /** From one feature to the next at the crossing height. */
        CROSS,
        /** Straight down into the work or to its depth. */
        PLUNGE,
        RETRACT
    }

    public static Move straight(Kind kind, Point3 from, Point3 to) {
        return new Move(kind, new Straight(from.plan(), to.plan()), from.z(), to.z());
    }

    public Point3 from() {
        return Point3.of(plan.from(), zFrom);
    }

    public Point3 to() {
        return Point3.of(plan.to(), zTo);
    }

    /** The place of the tool point at a fraction of the move. */
    public Point3 at(double fraction) {
        return Point3.of(plan.at(fraction), zFrom + fraction * (zTo - zFrom));
    }

    public boolean isLevel() {
        return zFrom == zTo;
    }

    public boolean isUpright() {
        return plan.from().at(plan.to());
    }

    public double length() {
        double along = plan.length();
        double up = zTo - zFrom;
        return Math.sqrt(along * along + up * up);
    }
}
