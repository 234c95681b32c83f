package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.CutForce;
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
 * What an operation does to the part: for milling the force over the turn at stations along the path, fed either way;
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
        double thrust = cut.thrust() == null ? 0 : cut.thrust().inside();
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
        double height = stage.lowest() + cut.depth() / 2 - heights.partBottom();
        List<Load> loads = new ArrayList<>();
        List<TurnPoint> turn = thinned(milling.turn());
        for (double along : List.of(0.0, heights.length() / 2, heights.length())) {
            for (int way : List.of(1, -1)) {
                Vector at = new Vector(along, heights.depth() / 2, height);
                turn.forEach(moment -> loads.add(onWork(moment, at, way)));
            }
        }
        return loads;
    }

    /** The work feels the opposite of the cutter; fed the other way, feed and cross turn round together. */
    private static Load onWork(TurnPoint moment, Vector at, int way) {
        CutForce force = moment.force();
        return new Load(
                "cut",
                at,
                new Vector(-way * force.feed(), -way * force.cross(), force.axial()),
                new Vector(0, 0, -force.torque()));
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
