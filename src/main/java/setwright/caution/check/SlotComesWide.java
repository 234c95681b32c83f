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
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SlotWidth;
import setwright.plan.cut.Tolerated;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** A toleranced slot or keyseat that is cut by a cutter of its own size comes as wide as that runs out and wanders. */
public final class SlotComesWide implements Check {
    /** Thinnest cutter that is offered for both sides, of the width (common practice). */
    private static final double THINNEST = 0.6;

    private static final double SMALLER = 0.3;

    @Override
    public String slug() {
        return "slot-comes-wide";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan).filter(SlotComesWide::meant).forEach(in -> look(in).ifPresent(found::add));
        return found;
    }

    private static boolean meant(Operations.In in) {
        return in.operation().kind() == Operation.Kind.SLOT || in.operation().kind() == Operation.Kind.KEYSEAT;
    }

    private Optional<Finding> look(Operations.In in) {
        Optional<Tolerated> allowed = Tolerated.of(in.features());
        Optional<Holder> holder = in.holderRow();
        Optional<OperationCut> cut = in.plan().cut().operation(in.operation().id());
        if (allowed.isEmpty()) {
            return Optional.empty();
        }
        return cut.isEmpty() || holder.isEmpty()
                ? Optional.of(in.unlooked(slug(), Operations.FOR_CUT))
                : SlotWidth.of(holder.get(), cut.get().surfaces()).map(slot -> judged(in, slot, allowed.get()));
    }

    private Finding judged(Operations.In in, SlotWidth slot, Tolerated allowed) {
        Margin margin = Margin.of(
                slug(),
                in.place("slot"),
                "Run-out and wander of " + in.cutter() + " in its slot",
                Figure.atMost(allowed.width(), slot.over(), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, slot, allowed));
    }

    private static String message(Operations.In in, SlotWidth slot, Tolerated allowed) {
        Words words = new Words(in.plan());
        return in.cutter() + " cuts the slot at its own size " + in.at() + ": it runs out " + words.fine(slot.runOut())
                + " and is pulled aside " + words.fine(slot.wander()) + ", so the slot may come "
                + words.fine(slot.over())
                + " wide; the drawing has " + words.fine(allowed.width())
                + ". Take a smaller cutter and cut both sides, or less depth a pass.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        double size = plan.rows()
                .cutter(tool.operation().cutter().value())
                .map(Cutter::diameter)
                .orElseThrow()
                .inside();
        List<Proposal> all = new ArrayList<>(tool.endMills(THINNEST * size, size - SMALLER, size - 1));
        all.addAll(CutChanges.of(plan, caution).shallower());
        all.addAll(tool.asShortAsItHolds());
        all.addAll(tool.otherHolders());
        return all;
    }
}
