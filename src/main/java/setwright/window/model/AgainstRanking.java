package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Standing;
import setwright.plan.choose.ChoicePlan;
import setwright.plan.choose.HolderRank;

/** What was taken though the ranking has another first, with the reason that was given. */
final class AgainstRanking {
    private static final String NO_REASON = "no reason given";

    private AgainstRanking() {}

    /** Holdings with a reason, and every holder that was inked and does not stand first. */
    static List<Review.Item> of(Planned planned) {
        List<Review.Item> items = new ArrayList<>();
        for (DrawnSetUp setUp : planned.plan().drawnUp().setUps()) {
            String because = planned.job().plan().because(setUp.id());
            if (!because.isEmpty()) {
                items.add(new Review.Item(Badge.NONE, "Held otherwise: " + setUp.title(), because, setUp.id(), ""));
            }
            setUp.operations()
                    .forEach(operation -> item(planned, setUp, operation).ifPresent(items::add));
        }
        return items;
    }

    private static Optional<Review.Item> item(Planned planned, DrawnSetUp setUp, DrawnOperation operation) {
        String id = operation.holder().value();
        return first(planned, operation)
                .filter(first -> operation.holder().standing() != Standing.PENCILLED
                        && !first.holder().id().equals(id))
                .map(first -> {
                    String because = planned.job().plan().because(operation.id());
                    String taken = planned.plan()
                            .rows()
                            .holder(id)
                            .map(holder -> holder.name())
                            .orElse(id);
                    return new Review.Item(
                            Badge.NONE,
                            planned.words().brief(operation) + " in " + taken + ", not in "
                                    + first.holder().name(),
                            because.isEmpty() ? NO_REASON : because,
                            setUp.id(),
                            operation.id());
                });
    }

    private static Optional<HolderRank.Candidate> first(Planned planned, DrawnOperation operation) {
        return planned.plan().choose().operations().stream()
                .filter(choice -> choice.operation().equals(operation.id()))
                .map(ChoicePlan.OperationChoice::ranked)
                .flatMap(List::stream)
                .filter(HolderRank.Candidate::kept)
                .findFirst();
    }
}
