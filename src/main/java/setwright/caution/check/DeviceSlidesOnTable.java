package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.holding.GripVerdict;
import setwright.plan.Plan;
import setwright.plan.hold.OperationHold;
import setwright.quantity.Printing;

/** The device moves on its own bolts before the part moves in the device. One caution a set-up. */
public final class DeviceSlidesOnTable implements Check {
    @Override
    public String slug() {
        return "device-slides-on-table";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream()
                .flatMap(in -> plan.hold().devices().stream()
                        .filter(hold -> hold.setUp().equals(in.setUp().id()))
                        .map(GripMargin::of)
                        .min(GripMargin.LEAST_FIRST)
                        .map(least -> judged(in, least))
                        .stream())
                .toList();
    }

    /** Nobody confirmed how hard the bolts are done up, so that it is a caution and never more. */
    private Finding judged(Clamped in, GripMargin least) {
        OperationHold hold = least.hold();
        Words words = new Words(in.plan());
        String cutter = words.cutter(Operations.operation(in.plan(), hold.setUp(), hold.operation()));
        Margin margin = Margin.of(
                        slug(),
                        Caution.Place.worstAt(
                                hold.setUp(),
                                hold.operation(),
                                "device",
                                in.vise().name()),
                        "Bolts of the " + in.vise().name() + " against " + cutter,
                        least.deciding())
                .between(least.band());
        return least.verdict() == GripVerdict.HOLDS
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(words, in, least));
    }

    private static String message(Words words, Clamped in, GripMargin least) {
        OperationHold hold = least.hold();
        Printing print = words.printing();
        return "The bolts of the " + in.vise().name() + " bear "
                + print.factor(hold.factor().expected())
                + " times the cut, " + print.factor(hold.factor().pessimistic()) + " on a bad day "
                + Words.at(hold.setUp(), hold.operation()) + "; " + print.factor(least.askedUsually()) + " and "
                + print.factor(least.askedOnABadDay())
                + " are asked. The vise shifts on the table: take less, or put a stop or keys against it.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return CutChanges.of(plan, caution).shallower();
    }
}
