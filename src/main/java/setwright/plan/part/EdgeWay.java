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
 * The way of an end mill along what stays: a step, an end, an outline; places on the side, from its middle.
 *
 * @param side that is up
 * @param cutter diameter
 * @param climb whether the edge comes out of the work at the wall, so that the wall is on the right of the feed
 */
record EdgeWay(SideOnTable side, double cutter, boolean climb) {
    /** What is taken away runs out over the edges of the side by so much, mm. */
    private static final double OVER = 1;

    /**
     * A step along an edge, in lanes of at most so wide from the edge inward. One that does not run along the whole edge
     * starts at its lower or left end.
     */
    Milled step(setwright.job.Edge edge, double width, double length, double lane) {
        PlanMap set = alongEdge(edge);
        double half = edgeLength(edge) / 2;
        double end = Math.min(half, length - half);
        double out = cutter / 2 + SlotWay.CLEAR;
        boolean whole = end >= half - 1e-9;
        double last = whole ? half + out : end - cutter / 2;
        boolean fromRight = edge == setwright.job.Edge.HIGH || edge == setwright.job.Edge.LEFT;
        double low = fromRight ? -last : -half - out;
        double high = fromRight ? half + out : last;
        int count = (int) Math.max(1, Math.ceil(width / lane - 1e-9));
        List<Lane> lanes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double y = width * i / count - cutter / 2;
            Lane one = Lane.straight(new Point2(low, y), new Point2(high, y), false);
            lanes.add(climb ? one.reversed() : one);
        }
        double stop = whole ? half + OVER : end;
        Region gone = Region.rectangle(
                new Point2(fromRight ? -stop : -half - OVER, -OVER), new Point2(fromRight ? half + OVER : stop, width));
        return new Milled(lanes, gone).mapped(set);
    }

    /** Sets x along an edge and y from it inward: what is cut lies at the right of x, the wall at its left. */
    PlanMap alongEdge(setwright.job.Edge edge) {
        double u = side.sizeU() / 2;
        double v = side.sizeV() / 2;
        return switch (edge) {
            case LOW -> PlanMap.shift(0, -v);
            case RIGHT -> PlanMap.quarterTurns(1).then(PlanMap.shift(u, 0));
            case HIGH -> PlanMap.quarterTurns(2).then(PlanMap.shift(0, v));
            case LEFT -> PlanMap.quarterTurns(3).then(PlanMap.shift(-u, 0));
        };
    }

    double edgeLength(setwright.job.Edge edge) {
        return switch (edge) {
            case LOW, HIGH -> side.sizeU();
            case LEFT, RIGHT -> side.sizeV();
        };
    }

    /** An end rounded about the middle line of the side: half a turn round its axis, with run-in and run-off. */
    Milled roundedEnd(setwright.job.Edge edge, double radius) {
        double across = Math.max(edgeLength(edge) / 2, radius) + OVER;
        Point2 axis = new Point2(0, radius);
        Point2 first = new Point2(radius, radius);
        Point2 last = new Point2(-radius, radius);
        Point2 right = new Point2(across, radius);
        Point2 rightOut = new Point2(across, -OVER);
        Point2 leftOut = new Point2(-across, -OVER);
        Point2 left = new Point2(-across, radius);
        Outline gone = new Outline(List.of(
                new Straight(first, right),
                new Straight(right, rightOut),
                new Straight(rightOut, leftOut),
                new Straight(leftOut, left),
                new Straight(left, last),
                new Arc(last, first, axis, true)));
        double way = radius + cutter / 2;
        double out = cutter / 2 + SlotWay.CLEAR;
        Point2 start = new Point2(-way, radius);
        Point2 end = new Point2(way, radius);
        List<Edge> edges = List.of(
                new Straight(start.plus(new Point2(0, out)), start),
                new Arc(start, end, axis, true),
                new Straight(end, end.plus(new Point2(0, out))));
        Lane lane = new Lane(edges, false);
        return new Milled(List.of(climb ? lane.reversed() : lane), Region.of(gone)).mapped(alongEdge(edge));
    }

    /** Round an outline, once; what is gone is the band that the cutter sweeps. */
    Milled round(Rounded outline, boolean inside) {
        Rounded way = outline.offset(inside ? -cutter / 2 : cutter / 2);
        Lane lane = inside ? new Lane(way.edges(), true) : led(way.edges());
        boolean forwards = inside == climb;
        return new Milled(List.of(forwards ? lane : lane.reversed()), band(outline, inside));
    }

    /** The same way with a run-in square to its start from outside, and out there again. */
    private Lane led(List<Edge> round) {
        Edge first = round.get(0);
        Point2 along = first.part(0, Math.min(1, 1 / first.length())).to().minus(first.from());
        Point2 out = new Point2(along.y(), -along.x()).times((cutter + SlotWay.CLEAR) / along.length());
        Point2 outside = first.from().plus(out);
        List<Edge> edges = new ArrayList<>();
        edges.add(new Straight(outside, first.from()));
        edges.addAll(round);
        edges.add(new Straight(first.from(), outside));
        return new Lane(edges, false);
    }

    private Region band(Rounded outline, boolean inside) {
        Outline edge = outline.outline();
        if (!inside) {
            return new Region(List.of(outline.offset(cutter).outline()), List.of(edge));
        }
        Rounded island = outline.offset(-cutter);
        boolean left = island.anticlockwise() == island
                && island.corners().stream().allMatch(corner -> edge.contains(corner.at()));
        return left ? new Region(List.of(edge), List.of(island.outline())) : Region.of(edge);
    }
}
