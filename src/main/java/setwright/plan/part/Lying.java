package setwright.plan.part;

import java.util.List;
import setwright.geometry.Side;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.job.Block;
import setwright.job.Hole;
import setwright.job.Size;

/** How a block lies: which of its sizes runs along the table, to the column and up. */
public record Lying(Size along, Size across, Size upright, int quarterTurns) {
    /** The block's middle to a hole of the side that is up, along the table and to the column. */
    public List<Point2> places(Hole hole) {
        boolean turned = quarterTurns % 2 != 0;
        double u = (turned ? across : along).nominal().inside();
        double v = (turned ? along : across).nominal().inside();
        return HolePlaces.fromMiddle(hole, u, v, quarterTurns);
    }

    /** The same seen with a side up: the far ends of the holes where they are on the opposite side. */
    public List<Point2> places(Hole hole, Side up) {
        if (up != hole.side().opposite()) {
            return places(hole);
        }
        boolean turned = quarterTurns % 2 != 0;
        double u = (turned ? across : along).nominal().inside();
        double v = (turned ? along : across).nominal().inside();
        boolean overLength = up == Side.TOP || up == Side.BOTTOM;
        PlanMap over = overLength ? new PlanMap(1, 0, 0, -1, 0, 0) : new PlanMap(-1, 0, 0, 1, 0, 0);
        PlanMap turn = PlanMap.quarterTurns(quarterTurns);
        return HolePlaces.fromMiddle(hole, u, v, 0).stream()
                .map(over.then(turn)::of)
                .toList();
    }

    public static Lying of(Block block, Side up, int quarterTurns) {
        Lying lying = switch (up) {
            case TOP, BOTTOM -> new Lying(block.length(), block.depth(), block.height(), quarterTurns);
            case FRONT, BACK -> new Lying(block.length(), block.height(), block.depth(), quarterTurns);
            case LEFT, RIGHT -> new Lying(block.depth(), block.height(), block.length(), quarterTurns);
        };
        return quarterTurns % 2 == 0 ? lying : new Lying(lying.across, lying.along, lying.upright, quarterTurns);
    }
}
