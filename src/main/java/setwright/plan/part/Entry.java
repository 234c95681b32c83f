package setwright.plan.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Move;
import setwright.geometry.Stock;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.shop.Cutter;

/**
 * How a cutter gets into what is closed: down a hole that was drilled there and takes it, else straight down, or wound down
 * along the cut where the operation asks that.
 *
 * @param diameter of the cutter
 * @param windsDown whether it is wound down along the cut where no hole takes it
 * @param holes that earlier operations left upright
 */
record Entry(double diameter, boolean windsDown, List<UprightCylinder> holes) {
    /** Slope of a cutter that is wound down along the cut (common practice: 2 to 5 degrees by hand). */
    static final double SLOPE = StrictMath.toRadians(3);

    /** A cutter is not wound down in less than so much of its diameter: its middle would never be clear. */
    private static final double LEAST_STROKE = 0.5;

    /** Length of a drill's point in radii, 118 degrees and a little. */
    private static final double POINT = 0.61;

    private static final double SAME = 0.01;

    Entry {
        holes = List.copyOf(holes);
    }

    static Entry of(DrawnOperation operation, Cutter cutter, Stock before) {
        List<UprightCylinder> holes = before.cuts().stream()
                .filter(UprightCylinder.class::isInstance)
                .map(UprightCylinder.class::cast)
                .toList();
        boolean winds = operation.method().value() == Operation.Method.WOUND_DOWN;
        return new Entry(cutter.diameter().inside(), winds, holes);
    }

    /** The lane led off from a hole that takes the cutter; itself where there is none that leads there. */
    Lane led(Lane lane, Region within, double floor) {
        return hole(lane, within, floor)
                .map(from -> {
                    List<Edge> edges = new ArrayList<>();
                    edges.add(new Straight(from, lane.start()));
                    edges.addAll(lane.edges());
                    return new Lane(edges, true);
                })
                .orElse(lane);
    }

    private Optional<Point2> hole(Lane lane, Region within, double floor) {
        return holes.stream()
                .filter(hole -> takes(hole, floor))
                .map(UprightCylinder::axis)
                .filter(axis -> within.contains(axis) && clear(new Straight(axis, lane.start()), within))
                .min(Comparator.comparingDouble(axis -> axis.distance(lane.start())));
    }

    private boolean clear(Straight way, Region within) {
        return within.outlines()
                .map((Outline outline) -> outline.gap(way).distance())
                .allMatch(gap -> gap >= diameter / 2 - SAME);
    }

    /** As wide as the cutter and down to the floor, but for the point of the drill. */
    private boolean takes(UprightCylinder hole, double floor) {
        return hole.radius() >= diameter / 2 - SAME && hole.zLow() <= floor + POINT * hole.radius();
    }

    /** Whether a lane is entered by winding down along it. */
    boolean winds(Lane lane, double floor) {
        return windsDown
                && lane.length() >= LEAST_STROKE * diameter
                && holes.stream()
                        .noneMatch(hole -> takes(hole, floor) && hole.axis().distance(lane.start()) < SAME);
    }

    /** To and fro along the lane, ending where it began, at the slope at most. */
    static List<Move> wound(Lane lane, double from, double to) {
        double way = (from - to) / StrictMath.tan(SLOPE);
        double stroke = Math.min(lane.length(), way / 2);
        int laps = (int) Math.max(1, Math.ceil(way / (2 * stroke) - 1e-9));
        List<Edge> out = lane.part(stroke);
        List<Edge> lap = new ArrayList<>(out);
        for (int i = out.size() - 1; i >= 0; i--) {
            lap.add(out.get(i).reversed());
        }
        List<Move> moves = new ArrayList<>();
        double whole = laps * 2 * stroke;
        double run = 0;
        double z = from;
        for (int i = 0; i < laps; i++) {
            for (Edge edge : lap) {
                run += edge.length();
                double next = run >= whole - 1e-9 ? to : from - (from - to) * run / whole;
                moves.add(new Move(Move.Kind.CUT, edge, z, next));
                z = next;
            }
        }
        return moves;
    }
}
