package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.choose.HolderFit;
import setwright.shop.Cutter;
import setwright.shop.Holder;
import setwright.shop.Machine;

/** A holder that may not take its cutter: kind, taper, capacity; and two pairings that are only a caution. */
public final class WrongHolder implements Check {
    @Override
    public String slug() {
        return "wrong-holder";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.each(plan, this::look);
    }

    private Finding look(Operations.In in) {
        DrawnOperation operation = in.operation();
        Optional<Cutter> cutter = in.plan().rows().cutter(operation.cutter().value());
        Optional<Holder> holder = in.plan().rows().holder(operation.holder().value());
        if (cutter.isEmpty()) {
            return in.unlooked(slug(), "a cutter of the shop");
        }
        if (holder.isEmpty()) {
            return in.unlooked(
                    slug(), "a holder of the shop that takes " + cutter.get().name());
        }
        return look(in, cutter.get(), holder.get());
    }

    private Finding look(Operations.In in, Cutter cutter, Holder holder) {
        Machine machine = in.plan().rows().machine();
        List<String> against = HolderFit.against(cutter, holder, machine);
        if (!against.isEmpty()) {
            boolean plainShank = HolderFit.onlyPlainShank(cutter, holder, machine);
            return fails(in, plainShank ? Severity.CAUTION : Severity.STOP, String.join("; ", against));
        }
        return reversesInKeyless(in.operation(), holder)
                ? fails(in, Severity.CAUTION, "a keyless chuck lets go when the tap is run backwards")
                : Finding.HOLDS;
    }

    private static boolean reversesInKeyless(DrawnOperation operation, Holder holder) {
        return operation.method().value() == Operation.Method.TAP_UNDER_POWER
                && holder.style() == Holder.Style.DRILL_CHUCK_KEYLESS;
    }

    private Finding fails(Operations.In in, Severity severity, String why) {
        Words words = new Words(in.plan());
        String pair = words.cutter(in.operation()) + " in " + words.holder(in.operation());
        String ids =
                in.operation().cutter().value() + "+" + in.operation().holder().value();
        return Finding.fails(
                Caution.Place.of(in.setUp().id(), in.operation().id(), ids, pair),
                slug(),
                severity,
                pair + " " + in.at() + ": " + why
                        + ". A cutter held like that slips, is pulled out, or does not go in: take another holder.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return ToolChanges.of(plan, caution).otherHolders();
    }
}
