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
 * The way of an end mill in a slot: along its middle where it is as wide as the cutter, else along its walls, and in lanes
 * between where these leave something. A cutter that is wider than the slot leaves its own width.
 *
 * @param width of the slot
 * @param cutter diameter of the cutter
 * @param climb whether the wall is on the right of the feed
 */
record SlotWay(double width, double cutter, boolean climb) {
    /** Beyond the work by so much, mm (common practice). */
    static final double CLEAR = 2;

    /** What is taken away runs out over an open end by so much, mm, so that nothing is left standing on the line. */
    private static final double OVER = 1;

    private static final double SAME = 0.02;

    /** From turn to turn at most so much of the cutter. */
    private static final double OVERLAP = 0.95;

    private boolean atSize() {
        return width - cutter <= SAME;
    }

    private double wide() {
        return Math.max(width, cutter);
    }

    /** From the middle of the slot to the axis along a wall. */
    private double aside() {
        return (width - cutter) / 2;
    }

    /** Lanes from the middle of the slot, least first. */
    List<Double> offsets() {
        if (atSize()) {
            return List.of(0.0);
        }
        int count = (int) Math.ceil(width / cutter - 1e-9);
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            found.add(2 * aside() * (i / (count - 1.0) - 0.5));
        }
        return found;
    }

    /** How far aside the axis goes round in each turn, from the middle out; the middle only where a turn leaves it standing. */
    private List<Double> turns() {
        int count = (int) Math.ceil(aside() / (OVERLAP * cutter) - 1e-9);
        List<Double> found = new ArrayList<>();
        for (int i = aside() / count > OVERLAP * cutter / 2 ? 0 : 1; i <= count; i++) {
            found.add(aside() * i / count);
        }
        return found;
    }

    /** Open at both ends, from one place along x to another; it starts and ends clear of the work. */
    Milled open(double from, double to) {
        double out = cutter / 2 + CLEAR;
        List<Lane> lanes = offsets().stream()
                .map(y -> Lane.straight(new Point2(from - out, y), new Point2(to + out, y), false))
                .toList();
        Region gone = Region.rectangle(new Point2(from - OVER, -wide() / 2), new Point2(to + OVER, wide() / 2));
        return new Milled(lanes, gone);
    }

    /** Open where x is greatest only; rounded where it is least. */
    Milled halfOpen(double from, double to) {
        double out = to + cutter / 2 + CLEAR;
        double middle = from + width / 2;
        List<Lane> lanes = new ArrayList<>();
        if (atSize()) {
            lanes.add(Lane.straight(new Point2(out, 0), new Point2(from + wide() / 2, 0), false));
        } else {
            turns().forEach(aside -> lanes.add(along(round(middle, out, aside))));
        }
        return new Milled(lanes, halfOpenGone(from + wide() / 2, to));
    }

    /** In along one wall, round the end and out along the other; along the middle and back where there is no aside. */
    private static Lane round(double middle, double out, double aside) {
        Point2 high = new Point2(middle, aside);
        Point2 low = new Point2(middle, -aside);
        Straight in = new Straight(new Point2(out, aside), high);
        return aside == 0
                ? new Lane(List.of(in), false)
                : new Lane(
                        List.of(
                                in,
                                new Arc(high, low, new Point2(middle, 0), true),
                                new Straight(low, new Point2(out, -aside))),
                        false);
    }

    private Lane along(Lane wall) {
        return climb ? wall : wall.reversed();
    }

    private Region halfOpenGone(double middle, double to) {
        double half = wide() / 2;
        Point2 high = new Point2(middle, half);
        Point2 low = new Point2(middle, -half);
        Point2 lowOut = new Point2(to + OVER, -half);
        Point2 highOut = new Point2(to + OVER, half);
        return Region.of(new Outline(List.of(
                new Arc(high, low, new Point2(middle, 0), true),
                new Straight(low, lowOut),
                new Straight(lowOut, highOut),
                new Straight(highOut, high))));
    }

    /** Closed at both ends, so long overall, with its middle at the origin along x. */
    Milled closed(double length) {
        if (!atSize()) {
            return new PocketWay(Math.max(length, width), width, width / 2, cutter, cutter, climb).roundAndRound();
        }
        Point2 from = new Point2(-Math.max(0, (length - wide()) / 2), 0);
        Point2 to = new Point2(-from.x(), 0);
        return new Milled(List.of(Lane.straight(from, to, true)), Region.of(Outline.slot(from, to, wide() / 2)));
    }

    /** Closed, round a centre at the origin. */
    Milled arc(double radius, double from, double sweep) {
        List<Lane> lanes = new ArrayList<>();
        if (atSize()) {
            lanes.add(new Lane(turn(Point2.ORIGIN, radius, from, sweep), true));
        } else {
            turns().forEach(aside -> lanes.addAll(walls(radius, from, sweep, aside)));
        }
        return new Milled(lanes, arcGone(radius, from, sweep));
    }

    private List<Lane> walls(double radius, double from, double sweep, double aside) {
        List<Edge> far = turn(Point2.ORIGIN, radius + aside, from, sweep);
        if (aside == 0) {
            return List.of(new Lane(far, true));
        }
        Lane near = new Lane(turn(Point2.ORIGIN, radius - aside, from, sweep), true).reversed();
        if (whole(sweep)) {
            return List.of(along(new Lane(far, true)), along(near));
        }
        List<Edge> edges = new ArrayList<>(far);
        Point2 end = PlanMap.turn(from + sweep).of(new Point2(radius, 0));
        Point2 start = PlanMap.turn(from).of(new Point2(radius, 0));
        edges.add(new Arc(far.get(far.size() - 1).to(), near.start(), end, true));
        edges.addAll(near.edges());
        edges.add(new Arc(
                near.edges().get(near.edges().size() - 1).to(), far.get(0).from(), start, true));
        return List.of(along(new Lane(edges, true)));
    }

    private static boolean whole(double sweep) {
        return sweep >= 2 * Math.PI - 1e-9;
    }

    private Region arcGone(double radius, double from, double sweep) {
        double inside = radius - wide() / 2;
        if (whole(sweep)) {
            return new Region(
                    List.of(Outline.circle(Point2.ORIGIN, radius + wide() / 2)),
                    List.of(Outline.circle(Point2.ORIGIN, inside)));
        }
        PlanMap start = PlanMap.turn(from);
        PlanMap end = PlanMap.turn(from + sweep);
        Point2 near = new Point2(inside, 0);
        Point2 far = new Point2(radius + wide() / 2, 0);
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
