package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.Engagement;
import setwright.cutting.Kienzle;
import setwright.cutting.MillingLoad;
import setwright.cutting.TurnPoint;
import setwright.geometry.plane.Point2;
import setwright.holding.balance.Load;
import setwright.holding.balance.Vector;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;

/**
 * What an operation does to the part: for milling the force over the turn at the ends of what the path cuts, a face fed either way;
 * for a hole its thrust and torque, and its torque alone as it breaks through. Places from the part's left front bottom
 * corner, mm, N, N·mm.
 */
final class OperationLoads {
    /** Moments of a turn that are balanced at each station; what lies between is inside their hull. */
    private static final int MOMENTS = 16;

    private OperationLoads() {}

    static List<Load> of(Heights heights, OperationStage stage, OperationCut cut) {
        MillingLoad milling = cut.milling();
        return milling == null ? hole(heights, stage, cut) : milling(heights, stage, cut, milling);
    }

    /** The same loads from a worn edge. */
    static List<Load> worn(List<Load> loads) {
        double factor = Kienzle.WORN_EDGE.inside();
        return loads.stream().map(load -> load.times(factor)).toList();
    }

    private static List<Load> hole(Heights heights, OperationStage stage, OperationCut cut) {
        double push = cut.thrust() == null ? 0 : cut.thrust().inside();
        boolean lifts = cut.hole() != null && cut.hole().fromBehind();
        double thrust = lifts ? -push : push;
        Vector turn = new Vector(0, 0, -cut.torque().inside());
        List<Load> loads = new ArrayList<>();
        for (Point2 spot : stage.spots()) {
            Vector at = new Vector(
                    spot.x() - heights.left(), spot.y() - heights.front(), stage.workTop() - heights.partBottom());
            loads.add(new Load("thrust and torque", at, new Vector(0, 0, -thrust), turn));
            loads.add(new Load("torque at breakthrough", at, Vector.ZERO, turn));
        }
        return loads;
    }

    private static List<Load> milling(Heights heights, OperationStage stage, OperationCut cut, MillingLoad milling) {
        List<Load> loads = new ArrayList<>();
        List<TurnPoint> turn = thinned(milling.turn());
        boolean eitherWay = evenAboutFeed(milling.cut().engagement());
        for (Station station : Station.along(heights, stage, cut.depth() / 2)) {
            for (int way : eitherWay ? List.of(1, -1) : List.of(1)) {
                turn.forEach(moment -> loads.add(station.onWork(moment, way)));
            }
        }
        return loads;
    }

    /** A slot, or a face that the cutter covers evenly: it leaves no wall on one side and may be fed either way. */
    private static boolean evenAboutFeed(Engagement arc) {
        return Math.abs(arc.start() + arc.exit() - Math.PI) < 1e-9;
    }

    private static List<TurnPoint> thinned(List<TurnPoint> turn) {
        int step = Math.max(1, turn.size() / MOMENTS);
        List<TurnPoint> kept = new ArrayList<>();
        for (int i = 0; i < turn.size(); i += step) {
            kept.add(turn.get(i));
        }
        return kept;
    }
}
