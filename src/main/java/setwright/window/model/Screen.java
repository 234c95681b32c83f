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
 * @param quick the quick check; closed while nobody asks
 * @param entry the page of drawing notes; closed while none are entered
 * @param bench a bench figure that is asked for; closed while none is
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
        String person,
        Quick quick,
        EntryPage entry,
        BenchPage bench) {
    public Screen {
        route = List.copyOf(route);
    }

    public Screen with(Quick asked, EntryPage entered, BenchPage bench) {
        return new Screen(
                title, way, head, route, card, next, walk, review, at, plan, notice, undo, redo, person, asked, entered,
                bench);
    }

    /** The same with what was found of the limits of the unfolded line. */
    public Screen ruled(List<LimitRule> rules) {
        return new Screen(
                title,
                way,
                head,
                route,
                card.ruled(rules),
                next,
                walk,
                review,
                at,
                plan,
                notice,
                undo,
                redo,
                person,
                quick,
                entry,
                bench);
    }
}
