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
import setwright.job.Divided;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.Flats;

/** Puts the passes in depth and the moves between them to the lanes of every feature that an operation mills. */
final class MillingWay {
    private final ToolHeights tool;
    private final Entry entry;
    private final List<Move> moves = new ArrayList<>();
    private final List<Solid> gone = new ArrayList<>();
    private double cutLength;
    private int runs;
    private Point3 here;

    private MillingWay(ToolHeights tool, Entry entry, Point2 start) {
        this.tool = tool;
        this.entry = entry;
        here = Point3.of(start, tool.crossing());
    }

    static OperationWay of(MilledFeatures features, Heights heights, ToolHeights tool, Entry entry) {
        MillingWay way = new MillingWay(tool, entry, tool.waiting(heights).plan());
        Point3 start = way.here;
        for (Feature feature : features.all()) {
            features.way(feature).ifPresent(cut -> way.cut(features, feature, cut, heights));
        }
        return new OperationWay(new ToolPath(start, way.moves), List.of(), way.gone, way.cutLength, way.runs);
    }

    private void cut(MilledFeatures features, Feature feature, Cut cut, Heights heights) {
        Milled milled = cut.milled();
        double floor = cut.floor();
        double top = Math.min(tool.workTop(), floor + milled.high());
        int from = moves.size();
        mill(milled, top, cut);
        lastPass(features.operation(), milled, floor);
        int repeats = RoundAxis.repeats(feature);
        runs += repeats * runs(from);
        cutLength += feature instanceof Divided divided && milled.scribed()
                ? Scribed.length(divided)
                : repeats * cutting(from);
        if (runs > 0) {
            gone.addAll(features.bevels(feature));
        }
        if (!milled.gone().isEmpty() && floor < top) {
            Prism one = new Prism(milled.gone(), floor, Math.min(tool.workTop() + 1, floor + milled.high()));
            gone.add(one);
            if (feature instanceof Flats flats && RoundAxis.lies(features.laid(), flats.side())) {
                gone.addAll(RoundAxis.otherFlats(flats, one, heights));
            }
        }
    }

    /** Along what stays, over the whole depth. */
    private void lastPass(DrawnOperation operation, Milled milled, double floor) {
        List<Lane> walls = WallLanes.of(operation.kind(), milled.lanes());
        for (int i = 0; i < WallLanes.times(operation); i++) {
            walls.forEach(lane -> run(lane, floor, floor, floor));
        }
    }

    private int runs(int from) {
        return (int) moves.subList(from, moves.size()).stream()
                .filter(move -> move.kind() == Move.Kind.RETRACT)
                .count();
    }

    private double cutting(int from) {
        return moves.subList(from, moves.size()).stream()
                .filter(move -> move.kind() == Move.Kind.CUT || move.kind() == Move.Kind.PLUNGE)
                .mapToDouble(Move::length)
                .sum();
    }

    /** Pass by pass, in each the lanes one after the other. */
    private void mill(Milled milled, double top, Cut cut) {
        double above = top;
        for (double z : passes(top, cut.floor(), cut.pass())) {
            for (Lane lane : milled.lanes()) {
                run(lane.plunged() ? entry.led(lane, milled.gone(), cut.floor()) : lane, cut.floor(), above, z);
            }
            above = z;
        }
    }

    private void run(Lane lane, double floor, double above, double z) {
        across(Move.Kind.CROSS, lane.start());
        if (!lane.plunged()) {
            toHeight(Move.Kind.APPROACH, z);
        } else if (entry.winds(lane, floor)) {
            toHeight(Move.Kind.APPROACH, above);
            Entry.wound(lane, above, z).forEach(this::add);
        } else {
            toHeight(Move.Kind.APPROACH, above);
            toHeight(Move.Kind.PLUNGE, z);
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
