package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Nearest;
import setwright.geometry.Role;
import setwright.plan.Plan;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;

/**
 * A stud stands up into what turns over its strap. Where the strap or its nut is as near, that is said instead. One caution
 * a stud.
 */
public final class StudInPath implements Check {
    private static final List<Role> TURNING =
            List.of(Role.CUTTER, Role.SHANK, Role.COLLET_NUT, Role.HOLDER, Role.SPINDLE_NOSE, Role.QUILL);

    @Override
    public String slug() {
        return "stud-in-path";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        List<String> said = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> Strapped.of(plan, in.setUp()).isPresent() && in.hasRoom())
                .forEach(in -> {
                    Optional<Nearest> near = in.room().flatMap(StudInPath::nearest);
                    String stud =
                            in.setUp().id() + near.map(one -> one.body().name()).orElse("");
                    if (near.isEmpty() || !said.contains(stud)) {
                        found.add(near.map(one -> failing(in, one)).orElse(Finding.HOLDS));
                        said.add(stud);
                    }
                });
        return found;
    }

    /** The nearest stud, where it is too near and everything else of the straps is not. */
    private static Optional<Nearest> nearest(OperationRoom room) {
        boolean others = room.touches().stream()
                .anyMatch(near -> Clamps.STRAPS.contains(near.body().role()) && tooNear(near));
        return others
                ? Optional.empty()
                : room.touches().stream()
                        .filter(near -> near.body().role() == Role.STUD && tooNear(near))
                        .findFirst();
    }

    private static boolean tooNear(Nearest near) {
        return TURNING.contains(near.section().role()) && near.clearance() < HolderMeets.FROM_CLAMPS;
    }

    private Finding failing(Operations.In in, Nearest near) {
        Words words = new Words(in.plan());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(
                        in.setUp().id(),
                        in.operation().id(),
                        strap(in, near),
                        near.body().name()),
                Words.sentence(near.section().name()) + " to the " + near.body().name(),
                Figure.atLeast(HolderMeets.FROM_CLAMPS, near.clearance(), Unit.MM));
        String how = near.touches()
                ? " runs " + words.length(-near.clearance()) + " into the "
                : " passes " + words.length(near.clearance()) + " from the ";
        return Finding.fails(
                margin,
                near.touches() ? Severity.STOP : Severity.CAUTION,
                Words.sentence(near.section().name()) + how + near.body().name() + " " + in.at() + "; "
                        + words.length(HolderMeets.FROM_CLAMPS)
                        + " is asked. It bends the stud and the strap lets go: take a shorter stud, or more"
                        + " stick-out.");
    }

    private static String strap(Operations.In in, Nearest near) {
        return Strapped.of(in.plan(), in.setUp()).stream()
                .flatMap(strapped -> strapped.straps().stream())
                .filter(place -> near.body().name().endsWith(place.name()))
                .map(place -> place.drawn().id())
                .findFirst()
                .orElse(near.body().name());
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        Figure figure = caution.figure();
        List<Proposal> longer = figure == null ? List.of() : tool.longer(figure.limit() - figure.value());
        List<Proposal> strap = StrapChanges.of(plan, caution.setUp(), caution.subject())
                .map(changes -> Stream.of(changes.otherStuds(), changes.turned())
                        .flatMap(List::stream)
                        .toList())
                .orElse(List.of());
        return Stream.of(strap, longer, tool.otherHolders())
                .flatMap(List::stream)
                .toList();
    }
}
