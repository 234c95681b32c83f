package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.job.Edits;
import setwright.job.Hole;
import setwright.job.Job;
import setwright.job.MachineAsItStands;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.location.ErrorBudget;
import setwright.location.FoundAgain;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.plan.place.Loading;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.shop.Machine;

/** The head of a round column is moved between tools that share a location: X and Y are lost with it. */
public final class XyLost implements Check {
    /** Heights nearer than this are one, mm. */
    private static final double SAME = 0.005;

    /** Two operations after each other at two heights, which have a place in common. */
    private record Move(Operations.In before, Operations.In after, String shared, OptionalDouble position) {}

    @Override
    public String slug() {
        return "xy-lost";
    }

    @Override
    public List<Finding> look(Plan plan) {
        if (!plan.rows().machine().losesPlace()) {
            return List.of();
        }
        return plan.drawnUp().setUps().stream()
                .map(setUp -> worst(plan, setUp).map(this::fails).orElse(Finding.HOLDS))
                .toList();
    }

    /** The move with the tightest position, else the first. */
    private static Optional<Move> worst(Plan plan, DrawnSetUp setUp) {
        List<Operations.In> placed = Operations.in(plan, setUp)
                .filter(in -> in.operation().kind() != Operation.Kind.FACE)
                .toList();
        return IntStream.range(1, placed.size())
                .mapToObj(at -> moves(placed.subList(0, at), placed.get(at)))
                .flatMap(moves -> moves)
                .reduce((one, other) -> tightness(other) < tightness(one) ? other : one);
    }

    private static double tightness(Move move) {
        return move.position().orElse(Double.POSITIVE_INFINITY);
    }

    /** From any earlier height: a feature that both make, or two holes with a position. */
    private static Stream<Move> moves(List<Operations.In> earlier, Operations.In after) {
        return earlier.stream()
                .filter(before -> Math.abs(height(before) - height(after)) > SAME)
                .flatMap(before -> shared(before, after).stream());
    }

    private static Optional<Move> shared(Operations.In before, Operations.In after) {
        Optional<String> same = before.operation().features().stream()
                .filter(after.operation().features()::contains)
                .findFirst();
        OptionalDouble tightest = positions(after).min();
        boolean both = tightest.isPresent() && positions(before).findAny().isPresent();
        if (same.isEmpty() && !both) {
            return Optional.empty();
        }
        String what = same.orElse(before.operation().features().get(0) + " and "
                + after.operation().features().get(0));
        return Optional.of(new Move(before, after, what, tightest));
    }

    private static DoubleStream positions(Operations.In in) {
        return Holes.of(in.operation(), in.plan().job())
                .map(Hole::position)
                .flatMap(Stream::ofNullable)
                .mapToDouble(Typed::inside);
    }

    private static double height(Operations.In in) {
        return in.operation().kneeHeight().value().inside();
    }

    private Finding fails(Move move) {
        double again = FoundAgain.error(
                new Loading(move.after().setUp(), move.after().plan().rows())
                        .datum()
                        .halfWidth());
        Caution.Place place = Caution.Place.worstAt(
                move.after().setUp().id(), move.after().operation().id(), "head", "the head on its column");
        double limit = ErrorBudget.radialLimit(move.position().orElse(Double.POSITIVE_INFINITY));
        return again <= limit
                ? Finding.fails(place, slug(), Severity.CAUTION, message(move, again, ""))
                : Finding.fails(
                        Margin.of(slug(), place, "Place found again", Figure.atMost(limit, again, Unit.MM)),
                        Severity.STOP,
                        message(
                                move,
                                again,
                                "; " + new Words(move.after().plan()).fine(limit)
                                        + " is asked, half the position tolerance"));
    }

    private static String message(Move move, double again, String asked) {
        Words words = new Words(move.after().plan());
        return "The head goes from " + words.length(height(move.before())) + " to "
                + words.length(height(move.after())) + " over the table "
                + move.after().at()
                + " and turns on its round column: X and Y of " + move.shared()
                + " are lost, and finding them again is "
                + words.fine(again) + " out" + asked
                + ": take one height that serves both tools, or find the zero again after the move.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        DrawnSetUp setUp = Operations.setUp(plan, caution.setUp());
        return Stream.concat(worst(plan, setUp).stream().flatMap(move -> oneHeight(plan, move)), otherMachines(plan))
                .toList();
    }

    /** The height of either tool for the other, the longer one's first. */
    private static Stream<Proposal> oneHeight(Plan plan, Move move) {
        Operations.In high = height(move.before()) > height(move.after()) ? move.before() : move.after();
        Operations.In low = high == move.before() ? move.after() : move.before();
        return Stream.of(at(plan, low, height(high)), at(plan, high, height(low)));
    }

    private static Proposal at(Plan plan, Operations.In in, double height) {
        Typed<Length> written = new Words(plan).typed(height);
        return new Proposal(
                Proposal.Way.KNEE,
                "Set the head at " + written.text() + " over the table for " + in.cutter() + " too "
                        + Words.now(in.operation().kneeHeight()) + ".",
                Edits.set(plan.drawnUp(), in.operation().id(), OperationField.KNEE_HEIGHT, Plannable.inked(written)));
    }

    private static Stream<Proposal> otherMachines(Plan plan) {
        Job job = plan.job();
        return plan.rows().all(Machine.class).stream()
                .filter(machine -> machine.kept().owned() != 0 && !machine.losesPlace())
                .map(machine -> new Proposal(
                        Proposal.Way.DEVICE,
                        "Take the job to the " + machine.name() + ", which keeps its place when the height changes.",
                        job.withPlan(job.plan().withMachine(new MachineAsItStands(machine.id(), List.of(), null)))));
    }
}
