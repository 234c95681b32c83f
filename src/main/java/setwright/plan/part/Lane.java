package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Straight;

/**
 * The way of a milling cutter's axis at one depth, end to end in the cut.
 *
 * @param edges joined, at least one, in the order they are run; a mere plunge is an edge without length
 * @param plunged whether the cutter goes straight down into the work at the start; else it comes in from outside
 */
record Lane(List<Edge> edges, boolean plunged) {
    Lane {
        edges = List.copyOf(edges);
    }

    static Lane straight(Point2 from, Point2 to, boolean plunged) {
        return new Lane(List.of(new Straight(from, to)), plunged);
    }

    Point2 start() {
        return edges.get(0).from();
    }

    Lane mapped(PlanMap map) {
        return new Lane(edges.stream().map(edge -> edge.mapped(map)).toList(), plunged);
    }

    double length() {
        return edges.stream().mapToDouble(Edge::length).sum();
    }

    /** Its edges as far as a stretch from its start. */
    List<Edge> part(double stretch) {
        List<Edge> found = new ArrayList<>();
        double left = stretch;
        for (Edge edge : edges) {
            if (left <= 1e-9) {
                break;
            }
            if (edge.length() > 0) {
                found.add(left >= edge.length() ? edge : edge.part(0, left / edge.length()));
                left -= edge.length();
            }
        }
        return found;
    }

    /** The same way run backwards. */
    Lane reversed() {
        List<Edge> back = new ArrayList<>();
        for (int i = edges.size() - 1; i >= 0; i--) {
            back.add(edges.get(i).reversed());
        }
        return new Lane(back, plunged);
    }
}
