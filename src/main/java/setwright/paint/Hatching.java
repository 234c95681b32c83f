package setwright.paint;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import setwright.drawing.Hatch;

/** The lines of hatching over a convex area, in px; areas of one hatch are in step with each other. */
final class Hatching {
    private final List<Point2D> corners;
    private final Point2D origin;
    private final Path2D lines = new Path2D.Double();

    private Hatching(List<Point2D> corners, Point2D origin) {
        this.corners = corners;
        this.origin = origin;
    }

    static Shape lines(List<Point2D> corners, Hatch hatch, Point2D origin) {
        Hatching hatching = new Hatching(corners, origin);
        switch (hatch) {
            case PART -> hatching.slanted(45, 6);
            case JAW -> hatching.slanted(-45, 6);
            case VISE -> hatching.slanted(-45, 11);
            case PACKING -> hatching.slanted(45, 3.5);
            case OTHER -> hatching.slanted(30, 8);
            case TOUCH -> {
                hatching.slanted(45, 3.5);
                hatching.slanted(-45, 3.5);
            }
        }
        return hatching.lines;
    }

    /** Lines at a slant from the horizontal, anticlockwise in degrees, so many px apart. */
    private void slanted(double degrees, double apart) {
        double x = Math.sin(Math.toRadians(degrees));
        double y = Math.cos(Math.toRadians(degrees));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point2D corner : corners) {
            double across = across(corner, x, y);
            low = Math.min(low, across);
            high = Math.max(high, across);
        }
        for (double at = Math.ceil(low / apart) * apart; at < high; at += apart) {
            line(at, x, y);
        }
    }

    private double across(Point2D place, double x, double y) {
        return (place.getX() - origin.getX()) * x + (place.getY() - origin.getY()) * y;
    }

    /** The stretch of one line between the two edges that it crosses. */
    private void line(double at, double x, double y) {
        boolean started = false;
        for (int i = 0; i < corners.size(); i++) {
            Point2D here = corners.get(i);
            Point2D next = corners.get((i + 1) % corners.size());
            double from = across(here, x, y) - at;
            double to = across(next, x, y) - at;
            if ((from < 0) == (to < 0)) {
                continue;
            }
            double share = from / (from - to);
            double px = here.getX() + share * (next.getX() - here.getX());
            double py = here.getY() + share * (next.getY() - here.getY());
            if (started) {
                lines.lineTo(px, py);
                return;
            }
            lines.moveTo(px, py);
            started = true;
        }
    }
}
