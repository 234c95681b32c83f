package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Straight;

/** A polygon anticlockwise whose corners may be rounded, mm. */
record Rounded(List<Corner> corners) {
    private static final double NOTHING = 1e-9;

    Rounded {
        corners = List.copyOf(corners);
    }

    /** @param radius by which it is rounded; 0 where it is sharp */
    record Corner(Point2 at, double radius) {}

    /** A rectangle about the origin with all corners alike. */
    static Rounded rectangle(double length, double width, double radius) {
        double u = length / 2;
        double v = width / 2;
        return new Rounded(List.of(
                new Corner(new Point2(-u, -v), radius),
                new Corner(new Point2(u, -v), radius),
                new Corner(new Point2(u, v), radius),
                new Corner(new Point2(-u, v), radius)));
    }

    /** The same run anticlockwise. */
    Rounded anticlockwise() {
        if (Outline.polygon(corners.stream().map(Corner::at).toList()).anticlockwise()) {
            return this;
        }
        List<Corner> back = new ArrayList<>(corners);
        java.util.Collections.reverse(back);
        return new Rounded(back);
    }

    /** Everywhere so far outside this one, inside where negative; outer corners turn round, inner ones stay. */
    Rounded offset(double by) {
        List<Corner> moved = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Corner corner = corners.get(i);
            Point2 in = along(i - 1);
            Point2 out = along(i);
            double turn = in.cross(out);
            Point2 aside = new Point2(in.y(), -in.x()).plus(new Point2(out.y(), -out.x()));
            double scale = by / (1 + in.dot(out));
            double radius = turn >= 0 ? corner.radius() + by : corner.radius() - by;
            moved.add(new Corner(corner.at().plus(aside.times(scale)), Math.max(0, radius)));
        }
        return new Rounded(moved);
    }

    /** The direction from a corner to the next, of length 1. */
    private Point2 along(int i) {
        int from = Math.floorMod(i, corners.size());
        Point2 step = corners.get((from + 1) % corners.size())
                .at()
                .minus(corners.get(from).at());
        return step.times(1 / step.length());
    }

    /** Whether every corner turns the same way. */
    boolean convex() {
        for (int i = 0; i < corners.size(); i++) {
            if (along(i - 1).cross(along(i)) < -NOTHING) {
                return false;
            }
        }
        return true;
    }

    /** The smallest radius of the corners that a cutter outside has to get into; infinite where there is none. */
    double leastInnerRadius(boolean inside) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            double turn = along(i - 1).cross(along(i));
            if (inside ? turn > NOTHING : turn < -NOTHING) {
                least = Math.min(least, corners.get(i).radius());
            }
        }
        return least;
    }

    /** The edges from after the first corner round to it again. */
    List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        Point2 start = leaving(0);
        Point2 here = start;
        for (int i = 1; i <= corners.size(); i++) {
            int at = i % corners.size();
            Point2 reached = entering(at);
            here = add(edges, new Straight(here, reached), here.distance(reached) > NOTHING);
            Point2 left = at == 0 ? start : leaving(at);
            if (here.distance(left) > NOTHING) {
                Point2 centre = centre(at);
                here = add(edges, new Arc(here, left, centre, along(at - 1).cross(along(at)) > 0), true);
            }
        }
        return closed(edges, start);
    }

    private static Point2 add(List<Edge> edges, Edge edge, boolean real) {
        if (real) {
            edges.add(edge);
            return edge.to();
        }
        return edge.from();
    }

    /** The last edge ends exactly where the first starts. */
    private static List<Edge> closed(List<Edge> edges, Point2 start) {
        int last = edges.size() - 1;
        Edge edge = edges.get(last);
        if (!edge.to().at(start) && edge instanceof Straight straight) {
            edges.set(last, new Straight(straight.from(), start));
        }
        return edges;
    }

    /** From a corner's sharp point to where its round starts. */
    private double setBack(int i) {
        Point2 in = along(i - 1);
        Point2 out = along(i);
        double half = StrictMath.atan2(Math.abs(in.cross(out)), in.dot(out)) / 2;
        return corners.get(Math.floorMod(i, corners.size())).radius() * StrictMath.tan(half);
    }

    private Point2 entering(int i) {
        return corners.get(i).at().minus(along(i - 1).times(setBack(i)));
    }

    private Point2 leaving(int i) {
        return corners.get(i).at().plus(along(i).times(setBack(i)));
    }

    private Point2 centre(int i) {
        Point2 in = along(i - 1);
        double side = in.cross(along(i)) > 0 ? 1 : -1;
        return entering(i)
                .plus(new Point2(-in.y(), in.x()).times(side * corners.get(i).radius()));
    }

    Outline outline() {
        return new Outline(edges());
    }

    Rounded mapped(PlanMap map) {
        return new Rounded(corners.stream()
                .map(corner -> new Corner(map.of(corner.at()), corner.radius()))
                .toList());
    }
}
