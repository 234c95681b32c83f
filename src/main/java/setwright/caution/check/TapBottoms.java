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
import setwright.caution.Proposal.Way;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.quantity.Unit;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.Threads;
import setwright.reach.BlindTap;
import setwright.shop.Tap;

/** A blind hole that is not deep enough for full thread, lead, one pitch of over-run and the chips. */
public final class TapBottoms implements Check {
    private static final double ROUNDING = 1e-6;

    /** Pitches that a tap goes on while a spindle stops and turns back, or a tapping head floats (common practice). */
    private static final double RUNS_ON = 1;

    private static final String BY_HAND = "The thread comes out short or the tap breaks";
    private static final String UNDER_POWER = "The tap breaks";

    @Override
    public String slug() {
        return "tap-bottoms";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.TAP)
                .forEach(in -> Holes.of(in.operation(), plan.job()).forEach(hole -> {
                    Size depth = hole.depth();
                    if (depth != null) {
                        found.add(look(in, hole, depth.nominal().inside()));
                    }
                }));
        return found;
    }

    private Finding look(Operations.In in, Hole hole, double fullThread) {
        Optional<DrawnOperation> drilled = drilled(in.plan(), hole.id()).findFirst();
        Optional<Tap> tap = tap(in.plan(), in.operation());
        if (drilled.isEmpty() || tap.isEmpty()) {
            return in.unlooked(slug(), "the tap, and the operation that drills " + hole.id());
        }
        BlindTap need = need(in, tap.get(), fullThread);
        return judged(
                in,
                hole,
                Figure.atLeast(need.drillDepth(), drilled.get().depth().value().inside(), Unit.MM));
    }

    private Finding judged(Operations.In in, Hole hole, Figure depth) {
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), hole.id(), called(hole)),
                "Depth drilled before " + new Words(in.plan()).cutter(in.operation()),
                depth);
        if (depth.value() >= depth.limit() - ROUNDING) {
            return Finding.holds(margin);
        }
        return in.operation().method().value().byHand()
                ? Finding.fails(margin, Severity.CAUTION, message(in, hole, depth, BY_HAND))
                : Finding.fails(margin, Severity.STOP, message(in, hole, depth, UNDER_POWER));
    }

    private static Stream<DrawnOperation> drilled(Plan plan, String hole) {
        return Operations.all(plan)
                .map(Operations.In::operation)
                .filter(one -> one.kind() == Operation.Kind.DRILL)
                .filter(one -> one.features().contains(hole));
    }

    private static Optional<Tap> tap(Plan plan, DrawnOperation operation) {
        return plan.rows()
                .cutter(operation.cutter().value())
                .filter(Tap.class::isInstance)
                .map(Tap.class::cast);
    }

    /**
     * A spiral flute lifts its chips out and a forming tap has none; every other needs a diameter of room for them. What
     * runs on while the spindle stops needs more of it; on the bench a bottoming tap follows the first.
     */
    private static BlindTap need(Operations.In in, Tap tap, double fullThread) {
        ScrewThread thread = Threads.listed().read(tap.thread());
        double chips = switch (tap.flute()) {
            case SPIRAL_FLUTE, FORM -> 0;
            case STRAIGHT, SPIRAL_POINT -> thread.major();
        };
        Operation.Method method = in.operation().method().value();
        double runsOn = switch (method) {
            case TAP_UNDER_POWER, TAP_WITH_HEAD -> RUNS_ON * thread.pitch();
            default -> 0;
        };
        double lead = method == Operation.Method.TAP_ON_BENCH ? lastLead(in.plan(), tap) : tap.leadThreads();
        return new BlindTap(fullThread, lead, thread.pitch(), chips + runsOn);
    }

    /** The shortest lead of the shop's taps for the same thread. */
    private static double lastLead(Plan plan, Tap first) {
        return plan.rows().all(Tap.class).stream()
                .filter(tap -> tap.kept().owned() != 0 && tap.thread().equals(first.thread()))
                .mapToInt(Tap::leadThreads)
                .min()
                .orElse(first.leadThreads());
    }

    private static String called(Hole hole) {
        return hole.note().isEmpty() ? hole.id() : hole.note();
    }

    private static String message(Operations.In in, Hole hole, Figure depth, String why) {
        Words words = new Words(in.plan());
        return words.cutter(in.operation()) + " meets the bottom of " + called(hole) + " " + in.at() + ": drilled "
                + words.length(depth.value()) + " at full diameter, " + words.length(depth.limit())
                + " wanted for thread, lead, over-run and chips. " + why
                + ": drill deeper, or take a tap with less lead.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>();
        Figure figure = caution.figure();
        if (figure != null) {
            drilled(plan, caution.subject()).forEach(one -> all.add(deeper(plan, one, figure.limit())));
        }
        all.addAll(otherTaps(plan, Operations.operation(plan, caution.setUp(), caution.operation())));
        return all;
    }

    /** As deep as the tap needs, up to the next half millimetre or sixty-fourth of an inch. */
    private static Proposal deeper(Plan plan, DrawnOperation drill, double needed) {
        Words words = new Words(plan);
        double step = switch (plan.job().plan().units()) {
            case METRIC -> 0.5;
            case INCH -> Unit.IN.toInside(1.0 / 64);
        };
        var depth = words.typed(Math.ceil(needed / step - ROUNDING) * step);
        return new Proposal(
                Way.DEPTH,
                "Drill " + depth.text() + " deep at full diameter " + Words.now(drill.depth()) + ".",
                Edits.set(plan.drawnUp(), drill.id(), OperationField.DEPTH, Plannable.inked(depth)));
    }

    private static List<Proposal> otherTaps(Plan plan, DrawnOperation operation) {
        return tap(plan, operation).stream()
                .flatMap(now -> plan.rows().all(Tap.class).stream()
                        .filter(other -> other.kept().owned() != 0)
                        .filter(other -> other.thread().equals(now.thread())
                                && !other.id().equals(now.id())))
                .map(other -> new Proposal(
                        Way.CUTTER,
                        "Take the " + other.name() + ".",
                        Edits.set(plan.drawnUp(), operation.id(), OperationField.CUTTER, Plannable.inked(other.id()))))
                .toList();
    }
}
