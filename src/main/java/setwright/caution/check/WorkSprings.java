package setwright.caution.check;

import java.util.ArrayList;
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
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.WorkGives;
import setwright.plan.cut.WorkGives.Where;
import setwright.quantity.Unit;

/** The part gives up or down under the cut: beyond the jaws, between its supports, or as the floor of a pocket. */
public final class WorkSprings implements Check {
    @Override
    public String slug() {
        return "work-springs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan).forEach(in -> found.addAll(look(in)));
        return found;
    }

    private List<Finding> look(Operations.In in) {
        return in.plan().cut().operation(in.operation().id()).map(OperationCut::work).orElse(List.of()).stream()
                .filter(gives -> gives.where() != Where.WALL)
                .flatMap(gives -> Optional.ofNullable(gives.allowed()).map(half -> judged(in, gives, half)).stream())
                .toList();
    }

    private Finding judged(Operations.In in, WorkGives gives, double half) {
        Margin margin = Margin.of(
                        slug(),
                        in.place(subject(gives.where())),
                        "Spring of the part " + where(gives.where()),
                        Figure.atMost(half, gives.inside(), Unit.MM))
                .between(gives.band());
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, gives, half));
    }

    private static String subject(Where where) {
        return switch (where) {
            case OVERHANG -> "overhang";
            case BETWEEN_SUPPORTS, SHAFT -> "span";
            case WALL -> "wall";
            case FLOOR -> "floor";
        };
    }

    private static String where(Where where) {
        return switch (where) {
            case OVERHANG -> "beyond the jaws";
            case BETWEEN_SUPPORTS, SHAFT -> "between its supports";
            case WALL -> "at the wall";
            case FLOOR -> "at the floor";
        };
    }

    private static String message(Operations.In in, WorkGives gives, double half) {
        Words words = new Words(in.plan());
        String span = words.length(gives.span());
        String what = switch (gives.where()) {
            case OVERHANG -> "The part stands out " + span + " beyond the jaws";
            case BETWEEN_SUPPORTS, SHAFT -> "The part lies free over " + span + " between its supports";
            case WALL -> "The wall stands " + span + " high";
            case FLOOR -> "The floor of " + words.length(gives.thick()) + " spans " + span + " with nothing under it";
        };
        String way = switch (gives.where()) {
            case OVERHANG -> "Put a jack under the end, or take less.";
            case BETWEEN_SUPPORTS, SHAFT -> "Bring the supports nearer together, put one more between, or take less.";
            case WALL, FLOOR -> "Put packing under it, cut it before the other side, or take less.";
        };
        return what + " and gives " + words.fine(gives.inside()) + " under " + in.cutter() + " " + in.at()
                + "; the drawing allows " + words.fine(half) + " either way. " + way;
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return CutChanges.of(plan, caution).shallower();
    }
}
