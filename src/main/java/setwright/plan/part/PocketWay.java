package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;

/**
 * The way of an end mill in a rectangular pocket about the origin: down in its middle, then round it in rings from the
 * inside out, the last along its walls.
 *
 * @param corner radius of its corners
 * @param cutter diameter
 * @param step widest step from ring to ring
 * @param climb whether it goes round anticlockwise, so that the wall is on the right of the feed
 */
record PocketWay(double length, double width, double corner, double cutter, double step, boolean climb) {
    Milled milled() {
        Region gone = Region.of(Rounded.rectangle(length, width, corner).outline());
        double narrow = (Math.min(length, width) - cutter) / 2;
        if (narrow < 0) {
            return new Milled(List.of(), gone);
        }
        int rings = (int) Math.ceil(narrow / step - 1e-9);
        List<Edge> edges = new ArrayList<>();
        for (int ring = rings; ring >= 0; ring--) {
            List<Edge> next = ring(rings == 0 ? 0 : narrow * ring / rings);
            if (!edges.isEmpty()) {
                edges.add(new Straight(
                        edges.get(edges.size() - 1).to(), next.get(0).from()));
            }
            edges.addAll(next);
        }
        return new Milled(List.of(new Lane(edges, true)), gone);
    }

    /** The axis on a ring so far from where it touches the walls; along the middle where nothing is left of it. */
    private List<Edge> ring(double inward) {
        double l = length - cutter - 2 * inward;
        double w = width - cutter - 2 * inward;
        if (l < 1e-6 || w < 1e-6) {
            return List.of(new Straight(
                    new Point2(-Math.max(l, 0) / 2, -Math.max(w, 0) / 2),
                    new Point2(Math.max(l, 0) / 2, Math.max(w, 0) / 2)));
        }
        Lane round = new Lane(
                Rounded.rectangle(l, w, Math.max(0, corner - cutter / 2 - inward))
                        .edges(),
                true);
        return climb ? round.edges() : round.reversed().edges();
    }
}
