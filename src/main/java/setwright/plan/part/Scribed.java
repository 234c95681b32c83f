package setwright.plan.part;

import java.util.List;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.Divided;
import setwright.job.Marks;
import setwright.job.Size;

/** Lines scribed round an axis with the spindle locked, from the edge of the dial inward. */
final class Scribed {
    private Scribed() {}

    /** The longest line, toward the machinist from the axis; the dial is turned under the point. Nothing counts as gone. */
    static Milled way(Divided divided, SideOnTable side) {
        Point2 axis = side.place(divided.axis());
        double rim = MilledFeatures.mm(divided.diameter()) / 2;
        Lane line = Lane.straight(new Point2(0, -rim), new Point2(0, -rim + longest(divided)), true)
                .mapped(PlanMap.shift(axis.x(), axis.y()));
        return new Milled(List.of(line), Region.NONE, Double.POSITIVE_INFINITY, true);
    }

    private static double longest(Divided divided) {
        double longest = 0;
        for (int i = 0; i < divided.count(); i++) {
            longest = Math.max(longest, line(divided, i));
        }
        return longest;
    }

    /** All lines together, each pressed in and drawn, mm. */
    static double length(Divided divided) {
        double sum = 0;
        for (int i = 0; i < divided.count(); i++) {
            sum += line(divided, i) + MilledFeatures.mm(divided.depth());
        }
        return sum;
    }

    private static double line(Divided divided, int at) {
        Marks marks = divided.marks();
        Size length = divided.length();
        double usual = length == null ? 0 : MilledFeatures.mm(length);
        return marks == null
                ? usual
                : switch (marks.at(at)) {
                    case LONG -> MilledFeatures.mm(marks.longLength());
                    case MIDDLE -> MilledFeatures.mm(marks.middleLength());
                    case SHORT -> usual;
                };
    }
}
