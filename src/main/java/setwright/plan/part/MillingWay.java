package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Move;
import setwright.geometry.Point3;
import setwright.geometry.Prism;
import setwright.geometry.Solid;
import setwright.geometry.ToolPath;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.shop.Cutter;

/** Puts the passes in depth and the moves between them to the lanes of every feature that an operation mills. */
final class MillingWay {
    private final ToolHeights tool;
    private final double pass;
    private final List<Move> moves = new ArrayList<>();
    private Point3 here;

    private MillingWay(ToolHeights tool, double pass, Point2 start) {
        this.tool = tool;
        this.pass = pass;
        here = Point3.of(start, tool.crossing());
    }

    static OperationWay of(
            DrawnOperation operation, Cutter cutter, SideOnTable side, Heights heights, ToolHeights tool, Job job) {
        MilledFeatures features = new MilledFeatures(side, operation, cutter);
        List<Solid> gone = new ArrayList<>();
        Point2 middle = side.onTable().of(Point2.ORIGIN);
        MillingWay way = new MillingWay(tool, Math.max(operation.depth().value().inside(), 0.01), middle);
        Point3 start = way.here;
        for (Feature feature : MilledFeatures.of(operation, job)) {
            double floor = MilledDepth.floor(feature, heights).orElse(tool.workTop());
            Milled milled = features.way(feature).mapped(side.onTable());
            double top = Math.min(tool.workTop(), floor + milled.high());
            way.mill(milled.lanes(), top, floor);
            if (!milled.gone().isEmpty() && floor < top) {
                gone.add(new Prism(milled.gone(), floor, Math.min(tool.workTop() + 1, floor + milled.high())));
            }
        }
        ToolPath path = new ToolPath(start, way.moves);
        return new OperationWay(path, List.of(), gone, path.length(Move.Kind.CUT, Move.Kind.PLUNGE));
    }

    /** Pass by pass, in each the lanes one after the other. */
    private void mill(List<Lane> lanes, double top, double floor) {
        double above = top;
        for (double z : passes(top, floor, pass)) {
            for (Lane lane : lanes) {
                run(lane, above, z);
            }
            above = z;
        }
    }

    private void run(Lane lane, double above, double z) {
        across(Move.Kind.CROSS, lane.start());
        if (lane.plunged()) {
            toHeight(Move.Kind.APPROACH, above);
            toHeight(Move.Kind.PLUNGE, z);
        } else {
            toHeight(Move.Kind.APPROACH, z);
        }
        for (Edge edge : lane.edges()) {
            if (edge.length() > 0) {
                add(new Move(Move.Kind.CUT, edge, z, z));
            }
        }
        toHeight(Move.Kind.RETRACT, tool.crossing());
    }

    /** Heights of the passes from a surface down to a floor, each at most so deep, all equal but for rounding. */
    static List<Double> passes(double top, double floor, double pass) {
        int count = (int) Math.min(1000, Math.max(1, Math.ceil((top - floor) / pass - 1e-6)));
        List<Double> found = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            found.add(i == count ? floor : Math.max(floor, top - i * pass));
        }
        return found;
    }

    private void across(Move.Kind kind, Point2 to) {
        if (!here.plan().at(to)) {
            add(Move.straight(kind, here, Point3.of(to, here.z())));
        }
    }

    private void toHeight(Move.Kind kind, double z) {
        if (here.z() != z) {
            add(Move.straight(kind, here, Point3.of(here.plan(), z)));
        }
    }

    private void add(Move move) {
        moves.add(move);
        here = move.to();
    }
}
