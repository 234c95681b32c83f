package setwright.caution.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.shop.BoringBar;
import setwright.shop.Cutter;
import setwright.shop.HeadDial;
import setwright.shop.Holder;

/**
 * A hole that a bar in a boring head opens.
 *
 * @param size of the bore, mm
 * @param head dial and slide of its boring head; null where its row does not say
 */
record Bored(
        Operations.In in,
        BoringBar bar,
        double size,
        @Nullable HeadDial head) {
    static Stream<Bored> all(Plan plan) {
        return Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.BORE)
                .flatMap(in -> of(in).stream());
    }

    static Optional<Bored> of(Operations.In in) {
        Optional<Cutter> cutter = in.cutterRow();
        Optional<OperationCut> cut = in.plan().cut().operation(in.operation().id());
        if (cutter.isEmpty() || cut.isEmpty() || !(cutter.get() instanceof BoringBar bar)) {
            return Optional.empty();
        }
        HeadDial head = in.holderRow().map(Holder::head).orElse(null);
        return Optional.of(new Bored(in, bar, cut.get().width(), head));
    }

    /** How far the slide stands out of the middle at the last cut, mm; a bar in the middle cuts its least bore. */
    double offset() {
        return Math.max(0, (size - bar.diameter().inside()) / 2);
    }

    /** Every other bar of the shop, the stoutest first. */
    static List<Proposal> otherBars(Plan plan, Caution caution) {
        DrawnOperation bore = Operations.operation(plan, caution.setUp(), caution.operation());
        return plan.rows().all(BoringBar.class).stream()
                .filter(bar -> bar.kept().owned() != 0
                        && !bar.id().equals(bore.cutter().value()))
                .sorted(Comparator.comparingDouble(
                                (BoringBar bar) -> -bar.neckDiameter().inside())
                        .thenComparing(BoringBar::id))
                .map(bar -> new Proposal(
                        Way.CUTTER,
                        "Take the " + bar.name() + ".",
                        Edits.set(plan.drawnUp(), bore.id(), OperationField.CUTTER, Plannable.inked(bar.id()))))
                .toList();
    }
}
