package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Move;
import setwright.geometry.Point3;
import setwright.geometry.Prism;
import setwright.geometry.Profile;
import setwright.geometry.Solid;
import setwright.geometry.Stock;
import setwright.geometry.ToolPath;
import setwright.geometry.UprightCone;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.reach.ThroughDepth;
import setwright.shop.Cutter;

/** The way of the tool point in one operation, and what it takes from the stock. */
record OperationWay(ToolPath path, List<Point2> spots, List<Solid> gone, double cutLength, int runs) {
    /** The cutter starts and ends this far clear of the work, mm (common practice). */
    private static final double CLEAR = 2;

    static OperationWay of(
            DrawnSetUp setUp,
            DrawnOperation operation,
            Cutter cutter,
            Heights heights,
            ToolHeights tool,
            Job job,
            Stock before) {
        if (operation.kind().inHole()) {
            return holes(setUp, operation, cutter, heights, tool, job);
        }
        MilledFeatures features = MilledFeatures.of(setUp, operation, cutter, heights, job);
        if (features.facesAll()) {
            return facing(operation, cutter, heights, tool);
        }
        return features.inclined()
                .map(level -> facing(operation, cutter, heights.finishedAt(level), tool))
                .orElseGet(() -> MillingWay.of(features, heights, tool, Entry.of(operation, cutter, before)));
    }

    Stock cut(Stock before) {
        Stock after = before;
        for (Solid one : gone) {
            after = after.less(one);
        }
        return after;
    }

    private static OperationWay facing(DrawnOperation operation, Cutter cutter, Heights heights, ToolHeights tool) {
        double radius = cutter.diameter().inside() / 2;
        double from = heights.left() - radius - CLEAR;
        double to = heights.right() + radius + CLEAR;
        List<Double> lanes = lanes(operation, heights, radius);
        ToolPath path = ToolPath.from(new Point3(from, lanes.get(0), tool.crossing()));
        for (double z : passes(operation, heights)) {
            for (double y : lanes) {
                path = path.across(Move.Kind.CROSS, new Point2(from, y))
                        .toHeight(Move.Kind.APPROACH, z)
                        .across(Move.Kind.CUT, new Point2(to, y))
                        .toHeight(Move.Kind.RETRACT, tool.crossing());
            }
        }
        int runs = passes(operation, heights).size() * lanes.size();
        Solid gone = Prism.box(
                new Point2(heights.left() - 1, heights.front() - 1),
                new Point2(heights.right() + 1, heights.back() + 1),
                heights.finishedTop(),
                heights.startTop() + 1);
        return new OperationWay(path, List.of(), List.of(gone), path.length(Move.Kind.CUT), runs);
    }

    private static List<Double> lanes(DrawnOperation operation, Heights heights, double radius) {
        double width = Math.min(operation.width().value().inside(), 2 * radius);
        int count = (int) Math.ceil(heights.depth() / width - 1e-9);
        if (count <= 1) {
            return List.of((heights.front() + heights.back()) / 2);
        }
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            found.add(heights.front() + (i + 1) * width - radius);
        }
        return found;
    }

    private static List<Double> passes(DrawnOperation operation, Heights heights) {
        double depth = Math.max(operation.depth().value().inside(), 0.01);
        List<Double> found = new ArrayList<>();
        double z = heights.startTop();
        while (z > heights.finishedTop() + 1e-6 && found.size() < 1000) {
            z = Math.max(heights.finishedTop(), z - depth);
            found.add(z);
        }
        return found.isEmpty() ? List.of(heights.finishedTop()) : found;
    }

    private static OperationWay holes(
            DrawnSetUp setUp, DrawnOperation operation, Cutter cutter, Heights heights, ToolHeights tool, Job job) {
        Lying lying = Lying.of(job.plan().blank().envelope(), setUp.up().value(), setUp.quarterTurns());
        Point2 middle = new Point2((heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2);
        List<Down> downs = new ArrayList<>();
        Holes.of(operation, job)
                .forEach(hole -> lying.places(hole, setUp.up().value()).forEach(place -> {
                    Point2 spot = place.plus(middle);
                    double low = tool.workTop()
                            - HoleDepths.of(operation, cutter, hole, tool.workTop() - heights.partBottom());
                    double opened = Mouths.diameter(operation.kind(), cutter, hole);
                    downs.add(new Down(
                            spot,
                            low,
                            HoleDepths.fromBehind(cutter)
                                    ? underneath(operation, cutter, hole, spot, heights)
                                    : hollow(cutter, opened, spot, low, tool.workTop() + 1)));
                }));
        List<Down> order = HoleOrder.of(downs.stream().map(Down::spot).toList()).stream()
                .map(downs::get)
                .toList();
        List<Point2> spots = order.stream().map(Down::spot).toList();
        List<Double> lowest = order.stream().map(Down::low).toList();
        List<Solid> gone = operation.kind() == Operation.Kind.TAP
                ? List.of()
                : order.stream().map(Down::gone).toList();
        return new OperationWay(path(spots, lowest, tool), spots, gone, cutLength(lowest, tool), spots.size());
    }

    /** One hole: where, how low the point of the tool goes, and what it leaves open. */
    private record Down(Point2 spot, double low, Solid gone) {}

    private static ToolPath path(List<Point2> spots, List<Double> lowest, ToolHeights tool) {
        Point2 first = spots.isEmpty() ? Point2.ORIGIN : spots.get(0);
        ToolPath path = ToolPath.from(Point3.of(first, tool.crossing()));
        for (int i = 0; i < spots.size(); i++) {
            path = path.across(Move.Kind.CROSS, spots.get(i))
                    .toHeight(Move.Kind.PLUNGE, lowest.get(i))
                    .toHeight(Move.Kind.RETRACT, tool.crossing());
        }
        return path;
    }

    private static double cutLength(List<Double> lowest, ToolHeights tool) {
        return lowest.stream().mapToDouble(low -> tool.workTop() - low).sum();
    }

    /** What a cutter takes that is drawn up from below. */
    private static Solid underneath(DrawnOperation operation, Cutter cutter, Hole hole, Point2 spot, Heights heights) {
        double radius = Mouths.diameter(operation.kind(), cutter, hole) / 2;
        double up = Mouths.depth(operation.kind(), cutter, hole);
        return new UprightCylinder(spot, radius, heights.partBottom() - 1, heights.partBottom() + up);
    }

    /** What a tool leaves open: its cylinder, with its point below. */
    private static Solid hollow(Cutter cutter, double opened, Point2 spot, double low, double top) {
        double radius = opened / 2;
        double point = pointLength(cutter);
        if (cutter.form() == Cutter.Form.SPOT_DRILL || cutter.form() == Cutter.Form.COUNTERSINK) {
            double full = cutter.diameter().inside() / 2;
            double deep = top - low;
            return deep > point
                    ? new UprightCylinder(spot, full, low + point, top).pointedDown(point)
                    : new UprightCone(spot, new Profile(low, top, 0, full * deep / point));
        }
        UprightCylinder open = new UprightCylinder(spot, radius, low + point, Math.max(top, low + point));
        return point > 0 ? open.pointedDown(point) : open;
    }

    static double pointLength(Cutter cutter) {
        return cutter.tipAngle() < Math.PI
                ? ThroughDepth.pointLength(cutter.diameter().inside(), cutter.tipAngle())
                : 0;
    }
}
