package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** The plan of a lying cylinder or cone so far above or below its axis; of a cone a figure of straight edges within it. */
record LyingPlan(Turned body) {
    private static final int PLACES = 48;
    private static final double NOTHING = 1e-9;

    Region at(double off) {
        double start = shareOf(off, true);
        double end = shareOf(off, false);
        boolean cylinder = body.radiusFrom() == body.radiusTo();
        if (off >= Math.max(body.radiusFrom(), body.radiusTo()) || end - start <= NOTHING) {
            return Region.NONE;
        }
        List<Point2> right = new ArrayList<>();
        List<Point2> left = new ArrayList<>();
        int places = cylinder ? 1 : PLACES;
        for (int i = 0; i <= places; i++) {
            double share = start + (end - start) * spread(i / (double) places);
            double half = half(share, off);
            Point2 on = place(share);
            right.add(on.plus(aside().times(half)));
            if (half > NOTHING) {
                left.add(0, on.minus(aside().times(half)));
            }
        }
        right.addAll(left);
        return Region.of(Outline.polygon(right));
    }

    /** Closer together near the thin end, where the figure turns most. */
    private double spread(double even) {
        return body.radiusTo() >= body.radiusFrom() ? even * even : 1 - (1 - even) * (1 - even);
    }

    private double half(double share, double off) {
        double radius = body.radiusFrom() + share * (body.radiusTo() - body.radiusFrom());
        return Math.sqrt(Math.max(0, radius * radius - off * off));
    }

    /** Where along the axis the radius starts or stops to be more than the distance from it. */
    private double shareOf(double off, boolean first) {
        double from = body.radiusFrom();
        double to = body.radiusTo();
        if ((first ? from : to) >= off || from == to) {
            return first ? 0 : 1;
        }
        return Math.max(0, Math.min(1, (off - from) / (to - from)));
    }

    private Point2 place(double share) {
        Point2 from = body.from().plan();
        return from.plus(body.to().plan().minus(from).times(share));
    }

    private Point2 aside() {
        Point2 step = body.to().plan().minus(body.from().plan());
        return new Point2(step.y(), -step.x()).times(1 / step.length());
    }
}
