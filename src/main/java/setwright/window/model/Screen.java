package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.plan.Plan;
import setwright.window.state.Notice;
import setwright.window.state.Selection;
import setwright.window.state.Way;

/**
 * Everything that stands in the window.
 *
 * @param title of the frame
 * @param plan what the bench draws; empty while nothing was worked out
 * @param undo name of the step that undo takes back; empty where there is none
 * @param redo name of the step that redo does again; empty where there is none
 * @param person name offered for signatures
 */
public record Screen(
        String title,
        Way way,
        Head head,
        List<RouteCard> route,
        Card card,
        Next next,
        Walk walk,
        Review review,
        Selection at,
        Optional<Plan> plan,
        Notice notice,
        String undo,
        String redo,
        String person) {
    public Screen {
        route = List.copyOf(route);
    }
}
