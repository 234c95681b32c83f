package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.Edge;
import setwright.job.DrawnOperation;
import setwright.job.Operation;

/** The lanes along what stays, that the last pass runs again over the whole depth. */
final class WallLanes {
    private WallLanes() {}

    /** How often they are run once roughing is done: never, once, or once more for the spring. */
    static int times(DrawnOperation operation) {
        return operation.finish().value().inside() <= 0
                ? 0
                : switch (operation.lastPass().value()) {
                    case NONE -> 0;
                    case ONE -> 1;
                    case WITH_SPRING_PASS -> 2;
                };
    }

    /** Of the lanes of one feature. A slot of the cutter's own width has its walls already. */
    static List<Lane> of(Operation.Kind kind, List<Lane> lanes) {
        if (lanes.isEmpty()) {
            return List.of();
        }
        Lane last = lanes.get(lanes.size() - 1);
        return switch (kind) {
            case SLOT, KEYSEAT ->
                lanes.size() > 1
                        ? List.of(lanes.get(0), last)
                        : ring(last).stream().toList();
            case STEP -> List.of(last);
            case PROFILE -> lanes;
            case POCKET -> List.of(ring(last).orElse(last));
            default -> List.of();
        };
    }

    /** The closed way that a lane ends with; empty where it ends elsewhere than it was. */
    private static Optional<Lane> ring(Lane lane) {
        List<Edge> found = new ArrayList<>();
        List<Edge> edges = lane.edges();
        for (int i = edges.size() - 1; i >= 0; i--) {
            found.add(0, edges.get(i));
            if (edges.get(i).from().at(edges.get(edges.size() - 1).to())) {
                return Optional.of(new Lane(found, true));
            }
        }
        return Optional.empty();
    }
}
