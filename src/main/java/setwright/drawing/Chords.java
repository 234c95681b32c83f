package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import setwright.geometry.Point3;
import setwright.geometry.Prism;
import setwright.geometry.Profile;
import setwright.geometry.Single;
import setwright.geometry.UprightCone;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;

/** What an upright plane across the line of sight cuts out of solids, height by height. */
record Chords(View view, double at) {
    /** The chord of a solid at a height strictly between its ends. */
    Spans of(Single solid, double z) {
        if (z <= solid.zLow() || z >= solid.zHigh()) {
            return Spans.NONE;
        }
        return switch (solid.kind()) {
            case PRISM -> of(((Prism) solid).region());
            case UPRIGHT_CYLINDER -> round(((UprightCylinder) solid).axis(), ((UprightCylinder) solid).radius());
            case UPRIGHT_CONE ->
                round(
                        ((UprightCone) solid).axis(),
                        ((UprightCone) solid).profile().radiusAt(z));
            case TURNED, POLYHEDRON -> of(solid.core(z, z));
            case UNION -> Spans.NONE;
        };
    }

    /** True where the chord of a solid bends with height: what lies, and a cone that is not cut through its axis. */
    boolean bends(Single solid) {
        return switch (solid.kind()) {
            case PRISM, UPRIGHT_CYLINDER, UNION -> false;
            case TURNED, POLYHEDRON -> true;
            case UPRIGHT_CONE -> Math.abs(away(((UprightCone) solid).axis()) - at) > 1e-6;
        };
    }

    /** True for what is round about an upright axis. */
    static boolean standsRound(Single solid) {
        return switch (solid.kind()) {
            case UPRIGHT_CYLINDER, UPRIGHT_CONE -> true;
            case PRISM, TURNED, POLYHEDRON, UNION -> false;
        };
    }

    /** How far the axis of a round solid lies beyond the plane; negative: on the side of the eye. */
    double beyond(Point2 axis) {
        return away(axis) - at;
    }

    double across(Point2 axis) {
        return view.across(Point3.of(axis, 0));
    }

    /** The profile of a round solid. */
    static Profile profile(Single solid) {
        return solid.kind() == setwright.geometry.Solid.Kind.UPRIGHT_CYLINDER
                ? ((UprightCylinder) solid).profile()
                : ((UprightCone) solid).profile();
    }

    static Point2 axis(Single solid) {
        return solid.kind() == setwright.geometry.Solid.Kind.UPRIGHT_CYLINDER
                ? ((UprightCylinder) solid).axis()
                : ((UprightCone) solid).axis();
    }

    private double away(Point2 axis) {
        return view.away(Point3.of(axis, 0));
    }

    private Spans round(Point2 axis, double radius) {
        double off = away(axis) - at;
        double squared = radius * radius - off * off;
        if (squared <= 0) {
            return Spans.NONE;
        }
        double half = Math.sqrt(squared);
        return Spans.of(across(axis) - half, across(axis) + half);
    }

    private Spans of(Region region) {
        TreeSet<Double> crossings = new TreeSet<>();
        region.outlines().flatMap(outline -> outline.edges().stream()).forEach(edge -> add(crossings, edge));
        List<Double> sorted = new ArrayList<>(crossings);
        Spans inside = Spans.NONE;
        for (int i = 1; i < sorted.size(); i++) {
            double low = sorted.get(i - 1);
            double high = sorted.get(i);
            if (region.contains(plan((low + high) / 2))) {
                inside = inside.and(Spans.of(low, high));
            }
        }
        return inside;
    }

    private Point2 plan(double across) {
        return view == View.FRONT ? new Point2(across, at) : new Point2(at, -across);
    }

    private void add(TreeSet<Double> crossings, Edge edge) {
        switch (edge.kind()) {
            case STRAIGHT -> straight(crossings, (Straight) edge);
            case ARC -> {
                Arc arc = (Arc) edge;
                for (Span span : round(arc.centre(), arc.radius()).all()) {
                    crossings.add(span.low());
                    crossings.add(span.high());
                }
            }
        }
    }

    private void straight(TreeSet<Double> crossings, Straight edge) {
        double from = away(edge.from()) - at;
        double to = away(edge.to()) - at;
        if (from * to <= 0 && from != to) {
            double share = from / (from - to);
            crossings.add(across(edge.from()) + share * (across(edge.to()) - across(edge.from())));
        }
    }
}
