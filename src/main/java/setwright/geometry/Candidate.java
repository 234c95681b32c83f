package setwright.geometry;

import setwright.geometry.plane.Gap;
import setwright.geometry.plane.Point2;

/** Where a section of the tool passes a solid with an upright axis. */
record Candidate(Target target, Stretch stretch, Swept swept, Gap gap, ProfileGap upright) implements Tightest {
    @Override
    public Nearest nearest(Section section, Body body) {
        Nearest.Place place = new Nearest.Place(at(), toolPoint(), toward(), stretch.move());
        return new Nearest(upright.clearance(), upright.side(), upright.height(), section, body, place);
    }

    private Point3 toolPoint() {
        double along = stretch.plan().fraction(gap.on());
        double z = stretch.isSlanted()
                ? stretch.zFrom() + along * (stretch.zTo() - stretch.zFrom())
                : swept.tipAt(upright.zTool(), stretch.zFrom());
        return Point3.of(gap.on(), z);
    }

    /** The nearest place of the solid, or the tool's own axis where that passes through the solid. */
    private Point3 at() {
        double radius = target.profile().radiusAt(upright.zBody());
        Point2 plan = gap.distance() <= radius ? gap.on() : gap.off().minus(across().times(radius));
        return Point3.of(plan, upright.zBody());
    }

    /** The direction in plan from the tool's axis to the solid; out of a solid all round it, reversed. */
    private Point2 across() {
        Point2 step = gap.off().minus(gap.on());
        double length = step.length();
        return length == 0 ? Point2.ORIGIN : step.times(Math.signum(gap.distance()) / length);
    }

    private Point3 toward() {
        double side = upright.side();
        double height = upright.height();
        double up = Math.signum(upright.zBody() - upright.zTool());
        if (upright.clearance() > 0) {
            side = Math.max(0, side);
            height = up * Math.max(0, height);
        } else if (side >= height && gap.distance() != 0) {
            side = 1;
            height = 0;
        } else {
            side = 0;
            height = up < 0 ? 1 : -1;
        }
        Point3 step = Point3.of(across().times(side), height);
        return step.length() == 0 ? step : step.times(1 / step.length());
    }
}
