package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;

/**
 * The way of an end mill in a rectangular pocket about the origin: round it in rings from the middle out, or to and fro in one
 * that is much longer than it is wide; the last time along its walls.
 *
 * @param corner radius of its corners
 * @param cutter diameter
 * @param step widest step from ring to ring, or from row to row
 * @param climb whether it goes round anticlockwise, so that the wall is on the right of the feed
 */
record PocketWay(double length, double width, double corner, double cutter, double step, boolean climb) {
    /** From so many times as long as wide on it is cut to and fro: fewer handles to turn round (common practice). */
    private static final double LONG = 3;

    /** Rings further apart than 1 / √2 of the cutter would leave something standing between their corners. */
    private static final double IN_CORNERS = 0.7;

    /** What the cutter leaves: its own radius where the corner is sharper. */
    private double left() {
        return Math.max(corner, cutter / 2);
    }

    Milled milled() {
        boolean rows = Math.max(length, width) > LONG * Math.min(length, width) && narrow() > 1e-6;
        return rows ? along(toAndFro()) : roundAndRound();
    }

    /** From the middle out. Nothing where the cutter does not go in. */
    Milled roundAndRound() {
        return narrow() < 0 ? new Milled(List.of(), Region.NONE) : along(rings(narrow()));
    }

    private Milled along(List<Edge> edges) {
        double round = Math.min(left(), Math.min(length, width) / 2);
        return new Milled(
                List.of(new Lane(edges, true)),
                Region.of(Rounded.rectangle(length, width, round).outline()));
    }

    private double narrow() {
        return (Math.min(length, width) - cutter) / 2;
    }

    private List<Edge> rings(double narrow) {
        int rings = (int) Math.ceil(narrow / Math.min(step, IN_CORNERS * cutter) - 1e-9);
        List<Edge> edges = new ArrayList<>();
        for (int ring = rings; ring >= 0; ring--) {
            follow(edges, ring(rings == 0 ? 0 : narrow * ring / rings));
        }
        return edges;
    }

    /** Rows along the longer way from one wall to the other, then once round. */
    private List<Edge> toAndFro() {
        double l = length - cutter;
        double w = width - cutter;
        boolean alongX = l >= w;
        double across = alongX ? w : l;
        double half = (alongX ? l : w) / 2;
        int rows = (int) Math.ceil(across / step - 1e-9) + 1;
        List<Edge> edges = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            double y = -across / 2 + across * row / (rows - 1);
            double from = row % 2 == 0 ? -half : half;
            Point2 start = alongX ? new Point2(from, y) : new Point2(y, from);
            Point2 end = alongX ? new Point2(-from, y) : new Point2(y, -from);
            follow(edges, List.of(new Straight(within(start, alongX), within(end, alongX))));
        }
        follow(edges, ring(0));
        return edges;
    }

    /** The first and the last row end where the rounded corners of the ring begin. */
    private Point2 within(Point2 place, boolean alongX) {
        double round = Math.max(0, left() - cutter / 2);
        double edge = (alongX ? width : length) / 2 - cutter / 2;
        double off = edge - Math.abs(alongX ? place.y() : place.x());
        if (off >= round) {
            return place;
        }
        double back = round - Math.sqrt(Math.max(0, round * round - (round - off) * (round - off)));
        return alongX
                ? new Point2(place.x() - Math.copySign(back, place.x()), place.y())
                : new Point2(place.x(), place.y() - Math.copySign(back, place.y()));
    }

    /** Straight over to what comes next, and along it. */
    private static void follow(List<Edge> edges, List<Edge> next) {
        if (!edges.isEmpty()) {
            edges.add(new Straight(edges.get(edges.size() - 1).to(), next.get(0).from()));
        }
        edges.addAll(next);
    }

    /** The axis on a ring so far from where it touches the walls; along the middle where nothing is left of it. */
    private List<Edge> ring(double inward) {
        double l = length - cutter - 2 * inward;
        double w = width - cutter - 2 * inward;
        if (l < 1e-6 || w < 1e-6) {
            return List.of(new Straight(
                    new Point2(Math.max(l, 0) / 2, Math.max(w, 0) / 2),
                    new Point2(-Math.max(l, 0) / 2, -Math.max(w, 0) / 2)));
        }
        Lane round = new Lane(
                Rounded.rectangle(l, w, Math.max(0, corner - cutter / 2 - inward))
                        .edges(),
                true);
        return climb ? round.edges() : round.reversed().edges();
    }
}
