package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.drawing.Drawing;
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
 * @param ranking what would hold the chosen line; closed while nobody asks
 * @param person name offered for signatures
 * @param plot that lies over the bench; empty while the set-up is to be seen
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
        BenchPage bench,
        RankingPage ranking,
        Optional<Drawing> plot) {
    public Screen {
        route = List.copyOf(route);
    }

    public Screen with(Quick asked, EntryPage entered, BenchPage bench) {
        return new Screen(
                title, way, head, route, card, next, walk, review, at, plan, notice, undo, redo, person, asked, entered,
                bench, ranking, plot);
    }

    /** The same with a ranking over the card. */
    public Screen ranked(RankingPage page) {
        return new Screen(
                title, way, head, route, card, next, walk, review, at, plan, notice, undo, redo, person, quick, entry,
                bench, page, plot);
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
                bench,
                ranking,
                plot);
    }

    /** The same with a plot over the bench. */
    public Screen plotted(Optional<Drawing> drawn) {
        return new Screen(
                title, way, head, route, card, next, walk, review, at, plan, notice, undo, redo, person, quick, entry,
                bench, ranking, drawn);
    }
}
