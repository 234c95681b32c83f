package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.cut.Tolerated;
import setwright.plan.cut.WorkGives;
import setwright.plan.cut.WorkGives.Where;
import setwright.quantity.Unit;

/** A thin wall that a pocket, slot or step leaves beside it gives way under the cutter and comes back thick. */
public final class ThinWall implements Check {
    @Override
    public String slug() {
        return "thin-wall";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .forEach(in -> Tolerated.of(in.features())
                        .flatMap(allowed -> look(in, allowed))
                        .ifPresent(found::add));
        return found;
    }

    private Optional<Finding> look(Operations.In in, Tolerated allowed) {
        return in.plan().cut().operation(in.operation().id()).stream()
                .flatMap(cut -> cut.work().stream())
                .filter(gives -> gives.where() == Where.WALL)
                .max(Comparator.comparingDouble(WorkGives::inside))
                .map(gives -> judged(in, gives, allowed));
    }

    private Finding judged(Operations.In in, WorkGives wall, Tolerated allowed) {
        Margin margin = Margin.of(
                        slug(),
                        in.place("wall"),
                        "Spring of the wall of " + new Words(in.plan()).length(wall.thick()),
                        Figure.atMost(allowed.out(), wall.inside(), Unit.MM))
                .between(wall.band());
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, wall, allowed));
    }

    private static String message(Operations.In in, WorkGives wall, Tolerated allowed) {
        Words words = new Words(in.plan());
        return "The wall " + words.length(wall.thick()) + " thick and " + words.length(wall.span())
                + " high gives " + words.fine(wall.inside()) + " under " + in.cutter() + " " + in.at()
                + "; the drawing allows " + words.fine(allowed.out())
                + " a wall: take a light last pass, put a block behind the wall, or cut this before the other side is thinned.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(LastPassChanges.of(plan, caution).all());
        all.addAll(CutChanges.of(plan, caution).shallower());
        return all;
    }
}
