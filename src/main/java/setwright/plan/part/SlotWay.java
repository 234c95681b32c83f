package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;

/**
 * The way of an end mill in a slot: along its middle where it is as wide as the cutter, else in lanes side by side, the
 * outer ones on its walls.
 *
 * @param width of the slot
 * @param cutter diameter of the cutter, at most the width
 */
record SlotWay(double width, double cutter) {
    /** Beyond the work by so much, mm (common practice). */
    static final double CLEAR = 2;

    /** What is taken away runs out over an open end by so much, mm, so that nothing is left standing on the line. */
    private static final double OVER = 1;

    private static final double SAME = 0.02;

    /** Lanes from the middle of the slot, least first. */
    List<Double> offsets() {
        double spare = width - cutter;
        if (spare <= SAME) {
            return List.of(0.0);
        }
        int count = (int) Math.ceil(width / cutter - 1e-9);
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            found.add(spare * (i / (count - 1.0) - 0.5));
        }
        return found;
    }

    /** Open at both ends, from one place along x to another; it starts and ends clear of the work. */
    Milled open(double from, double to) {
        double out = cutter / 2 + CLEAR;
        List<Lane> lanes = offsets().stream()
                .map(y -> Lane.straight(new Point2(from - out, y), new Point2(to + out, y), false))
                .toList();
        Region gone = Region.rectangle(new Point2(from - OVER, -width / 2), new Point2(to + OVER, width / 2));
        return new Milled(lanes, gone);
    }

    /** Open where x is greatest only; rounded where it is least. */
    Milled halfOpen(double from, double to) {
        double out = cutter / 2 + CLEAR;
        List<Lane> lanes = offsets().stream()
                .map(y -> Lane.straight(new Point2(to + out, y), new Point2(from + width / 2 - inner(y), y), false))
                .toList();
        double middle = from + width / 2;
        Point2 end = new Point2(middle, 0);
        Point2 high = new Point2(middle, width / 2);
        Point2 low = new Point2(middle, -width / 2);
        Point2 lowOut = new Point2(to + OVER, -width / 2);
        Point2 highOut = new Point2(to + OVER, width / 2);
        Outline gone = new Outline(List.of(
                new Arc(high, low, end, true),
                new Straight(low, lowOut),
                new Straight(lowOut, highOut),
                new Straight(highOut, high)));
        return new Milled(lanes, Region.of(gone));
    }

    /** Closed at both ends, so long overall, with its middle at the origin along x. */
    Milled closed(double length) {
        double half = Math.max(0, (length - width) / 2);
        List<Lane> lanes = offsets().stream()
                .map(y -> Lane.straight(new Point2(-half - inner(y), y), new Point2(half + inner(y), y), true))
                .toList();
        Region gone = Region.of(Outline.slot(new Point2(-half, 0), new Point2(half, 0), width / 2));
        return new Milled(lanes, gone);
    }

    /** How far beyond the middle of a round end the axis goes in a lane. */
    private double inner(double y) {
        double radius = (width - cutter) / 2;
        return Math.sqrt(Math.max(0, radius * radius - y * y));
    }

    /** Closed, round a centre at the origin. */
    Milled arc(double radius, double from, double sweep) {
        List<Lane> lanes = offsets().stream()
                .map(offset -> new Lane(turn(Point2.ORIGIN, radius + offset, from, sweep), true))
                .toList();
        return new Milled(lanes, arcGone(radius, from, sweep));
    }

    private Region arcGone(double radius, double from, double sweep) {
        double inside = radius - width / 2;
        if (sweep >= 2 * Math.PI - 1e-9) {
            return new Region(
                    List.of(Outline.circle(Point2.ORIGIN, radius + width / 2)),
                    List.of(Outline.circle(Point2.ORIGIN, inside)));
        }
        PlanMap start = PlanMap.turn(from);
        PlanMap end = PlanMap.turn(from + sweep);
        Point2 near = new Point2(inside, 0);
        Point2 far = new Point2(radius + width / 2, 0);
        Point2 middle = new Point2(radius, 0);
        return Region.of(new Outline(List.of(
                new Arc(start.of(far), end.of(far), Point2.ORIGIN, true),
                new Arc(end.of(far), end.of(near), end.of(middle), true),
                new Arc(end.of(near), start.of(near), Point2.ORIGIN, false),
                new Arc(start.of(near), start.of(far), start.of(middle), true))));
    }

    /** Arcs of at most a half turn anticlockwise. */
    static List<Edge> turn(Point2 centre, double radius, double from, double sweep) {
        int count = (int) Math.ceil(sweep / Math.PI - 1e-9);
        List<Edge> edges = new ArrayList<>();
        Point2 arm = new Point2(radius, 0);
        Point2 here = centre.plus(PlanMap.turn(from).of(arm));
        for (int i = 1; i <= count; i++) {
            Point2 next = centre.plus(PlanMap.turn(from + sweep * i / count).of(arm));
            edges.add(new Arc(here, next, centre, true));
            here = next;
        }
        return edges;
    }
}
