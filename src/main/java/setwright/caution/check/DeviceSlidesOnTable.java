package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.holding.GripVerdict;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.hold.Joint;
import setwright.plan.hold.OperationHold;
import setwright.quantity.Printing;

/** A device moves on its own bolts, or in the vise that it stands in, before the part moves in it. One caution a set-up. */
public final class DeviceSlidesOnTable implements Check {
    @Override
    public String slug() {
        return "device-slides-on-table";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp -> least(plan, setUp).map(least -> judged(plan, least)).stream())
                .toList();
    }

    private static Optional<GripMargin> least(Plan plan, DrawnSetUp setUp) {
        return plan.hold().devices().stream()
                .filter(hold -> hold.setUp().equals(setUp.id()) && hold.joint() != Joint.LOCK)
                .map(GripMargin::of)
                .min(GripMargin.LEAST_FIRST);
    }

    /** Nobody confirmed how hard bolts or jaws are done up, so that it is a caution and never more. */
    private Finding judged(Plan plan, GripMargin least) {
        OperationHold hold = least.hold();
        String cutter = new Words(plan).cutter(Operations.operation(plan, hold.setUp(), hold.operation()));
        Margin margin = Margin.of(
                        slug(),
                        Caution.Place.worstAt(hold.setUp(), hold.operation(), "device", hold.thing()),
                        what(hold) + " of the " + hold.thing() + " against " + cutter,
                        least.deciding())
                .between(least.band());
        return least.verdict() == GripVerdict.HOLDS
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(new Words(plan), least));
    }

    private static String what(OperationHold hold) {
        return hold.joint() == Joint.IN_VISE ? "Jaws" : "Bolts";
    }

    private static String message(Words words, GripMargin least) {
        OperationHold hold = least.hold();
        Printing print = words.printing();
        String where = hold.joint() == Joint.IN_VISE ? "in its vise" : "on the table";
        return "The " + what(hold).toLowerCase(java.util.Locale.ROOT) + " of the " + hold.thing() + " bear "
                + print.factor(hold.factor().expected())
                + " times the cut, " + print.factor(hold.factor().pessimistic()) + " on a bad day "
                + Words.at(hold.setUp(), hold.operation()) + "; " + print.factor(least.askedUsually()) + " and "
                + print.factor(least.askedOnABadDay())
                + " are asked. It shifts " + where + ": take less, or put a stop or keys against it.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return CutChanges.of(plan, caution).shallower();
    }
}
