package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Severity;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.thread.FormingDrill;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.TapDrill;
import setwright.quantity.thread.Threads;
import setwright.shop.Tap;

/** A drill of a neighbouring size that gives another fit: the hole out of its limits, or the thread too thin or too full. */
public final class NearDrillSize implements Check {
    /** A plain hole of a general size may come so much from it, mm (common practice: what a drill cuts over). */
    private static final double PLAIN = 0.1;

    /** Thread that is usual, as a share of 1.299 P (common practice). */
    private static final double THREAD_LEAST = 0.6;

    private static final double THREAD_MOST = 0.85;

    @Override
    public String slug() {
        return "near-drill-size";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.DRILL)
                .forEach(in -> plan.rows()
                        .cutter(in.operation().cutter().value())
                        .ifPresent(drill -> Holes.of(in.operation(), plan.job())
                                .filter(hole -> hole.make() != Hole.Make.REAMED && hole.make() != Hole.Make.BORED)
                                .forEach(hole -> found.add(
                                        look(in, hole, drill.diameter().inside())))));
        return found;
    }

    private Finding look(Operations.In in, Hole hole, double drill) {
        String thread = hole.thread();
        return thread == null
                ? plain(in, hole, drill)
                : tapped(in, hole, Threads.listed().read(thread), drill);
    }

    private Finding plain(Operations.In in, Hole hole, double drill) {
        Size size = hole.size();
        double least = size.toleranced() ? size.leastMm() : size.nominal().inside() - PLAIN;
        double most = size.toleranced() ? size.greatestMm() : size.nominal().inside() + PLAIN;
        if (drill >= least && drill <= most) {
            return Finding.HOLDS;
        }
        Words words = new Words(in.plan());
        return note(
                in,
                hole,
                " makes " + Words.called(hole) + " " + words.fine(drill) + " wide " + in.at() + "; " + words.fine(least)
                        + " to " + words.fine(most) + " is asked: take the drill of that size.");
    }

    private Finding tapped(Operations.In in, Hole hole, ScrewThread thread, double drill) {
        double share = formed(in, hole)
                ? FormingDrill.engagement(thread.major(), thread.pitch(), drill)
                : TapDrill.engagement(thread.major(), thread.pitch(), drill);
        if (share >= THREAD_LEAST && share <= THREAD_MOST) {
            return Finding.HOLDS;
        }
        Printing print = new Words(in.plan()).printing();
        return note(
                in,
                hole,
                " leaves " + print.of(Unit.PERCENT, share) + " of thread in " + Words.called(hole) + " " + in.at()
                        + "; "
                        + print.of(Unit.PERCENT, THREAD_LEAST) + " to " + print.of(Unit.PERCENT, THREAD_MOST)
                        + " is asked: take the " + (share < THREAD_LEAST ? "smaller" : "larger") + " drill.");
    }

    /** Whether its tap pushes the thread up. */
    private static boolean formed(Operations.In in, Hole hole) {
        return Operations.all(in.plan())
                .filter(one -> one.operation().kind() == Operation.Kind.TAP
                        && one.operation().features().contains(hole.id()))
                .flatMap(one -> one.cutterRow().stream())
                .anyMatch(tap -> tap instanceof Tap row && row.flute() == Tap.Flute.FORM);
    }

    private Finding note(Operations.In in, Hole hole, String says) {
        return Finding.fails(
                Caution.Place.of(in.setUp().id(), in.operation().id(), hole.id(), Words.called(hole)),
                slug(),
                Severity.NOTE,
                new Words(in.plan()).cutter(in.operation()) + says);
    }
}
