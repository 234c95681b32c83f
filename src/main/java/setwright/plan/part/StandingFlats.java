package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** Flats round an axis that stands: the cutter runs past the one that faces the machinist, and the work is turned. */
record StandingFlats(SideOnTable side, double cutter, boolean climb) {
    /** What is taken away runs out over the edges of the side by so much, mm. */
    private static final double OVER = 1;

    /** @param apothem from the axis to a flat */
    Milled milled(Point2 axis, int count, double apothem) {
        double half = (side.sizeU() + side.sizeV()) / 4 + cutter / 2 + SlotWay.CLEAR;
        double y = -apothem - cutter / 2;
        Lane past = Lane.straight(new Point2(-half, y), new Point2(half, y), false);
        Point2 corner = new Point2(side.sizeU() / 2 + OVER, side.sizeV() / 2 + OVER);
        Outline around = Outline.rectangle(corner.times(-1), corner);
        PlanMap set = PlanMap.shift(axis.x(), axis.y());
        Outline left = polygon(count, apothem).mapped(set);
        Region gone =
                count < 3 ? strips(around, count, apothem) : Region.of(around).minus(Region.of(left));
        return new Milled(List.of((climb ? past.reversed() : past).mapped(set)), gone);
    }

    private static Region strips(Outline around, int count, double apothem) {
        double far = 2 * Math.max(around.box().length(), around.box().depth());
        Region front = Region.rectangle(new Point2(-far, -far), new Point2(far, -apothem));
        Region back = Region.rectangle(new Point2(-far, apothem), new Point2(far, far));
        return Region.of(around).meet(count == 2 ? front.plus(back) : front);
    }

    /** With a flat toward the machinist. */
    private static Outline polygon(int count, double apothem) {
        double radius = apothem / StrictMath.cos(Math.PI / Math.max(3, count));
        List<Point2> corners = new ArrayList<>();
        for (int i = 0; i < Math.max(3, count); i++) {
            double angle = -Math.PI / 2 + (2 * i + 1) * Math.PI / Math.max(3, count);
            corners.add(new Point2(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
        }
        return Outline.polygon(corners);
    }
}
