package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Point3;
import setwright.geometry.Polyhedron;
import setwright.geometry.Profile;
import setwright.geometry.Solid;
import setwright.geometry.UprightCone;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.job.Chamfer;
import setwright.job.Dovetail;
import setwright.job.Edge;
import setwright.job.Hole;
import setwright.job.Job;

/**
 * What sloping cutters take, exactly: wedges round the outline of a side, cones at the mouths of holes, the room between the
 * flanks of a dovetail.
 *
 * @param top height of the finished side
 */
record Bevels(SideOnTable side, double top) {
    /** What is taken away runs out over the edges and the surface by so much, mm. */
    private static final double OVER = 1;

    List<Solid> chamfer(Chamfer chamfer, Job job) {
        double wide = MilledFeatures.mm(chamfer.width());
        double high = wide * StrictMath.tan(chamfer.angle().inside());
        if (chamfer.of().equals(Chamfer.OUTLINE)) {
            List<Solid> found = new ArrayList<>();
            for (Edge edge : Edge.values()) {
                found.add(wedge(edge, wide, high));
            }
            return found;
        }
        return job.plan().features().stream()
                .filter(feature -> feature.id().equals(chamfer.of()) && feature.side() == chamfer.side())
                .filter(Hole.class::isInstance)
                .flatMap(hole -> mouths((Hole) hole, wide, high).stream())
                .toList();
    }

    private Solid wedge(Edge edge, double wide, double high) {
        EdgeWay way = new EdgeWay(side, 0, false);
        double half = way.edgeLength(edge) / 2 + OVER;
        List<Point2> section = List.of(
                new Point2(-OVER, top - high),
                new Point2(0, top - high),
                new Point2(wide + OVER * wide / high, top + OVER),
                new Point2(-OVER, top + OVER));
        return bar(section, half, way.alongEdge(edge).then(side.onTable()));
    }

    /** A section in y and z, run along x to both sides. */
    private static Polyhedron bar(List<Point2> section, double half, PlanMap set) {
        List<Point3> corners = new ArrayList<>();
        for (double x : new double[] {-half, half}) {
            section.forEach(at -> corners.add(Point3.of(set.of(new Point2(x, at.x())), at.y())));
        }
        return new Polyhedron(corners);
    }

    private List<Solid> mouths(Hole hole, double wide, double high) {
        double radius = MilledFeatures.mm(hole.size()) / 2;
        Profile cone = new Profile(top - high, top + OVER, radius, radius + wide + OVER * wide / high);
        List<Solid> found = new ArrayList<>();
        for (Point2 place : HolePlaces.fromMiddle(hole, side.sizeU(), side.sizeV(), 0)) {
            found.add(new UprightCone(side.onTable().of(place), cone));
        }
        return found;
    }

    /** From side to side, under the surface of the slot that was cut first. */
    List<Solid> dovetail(Dovetail tail) {
        if (tail.male()) {
            return List.of();
        }
        double depth = MilledFeatures.mm(tail.depth());
        double wide = MilledFeatures.mm(tail.width()) / 2;
        double open = wide - depth / StrictMath.tan(tail.angle().inside());
        List<Point2> section = List.of(
                new Point2(-wide, top - depth),
                new Point2(wide, top - depth),
                new Point2(open, top),
                new Point2(-open, top));
        return List.of(
                bar(section, side.sizeU() + side.sizeV(), side.set(tail.place()).then(side.onTable())));
    }
}
