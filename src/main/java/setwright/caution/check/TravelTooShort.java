package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Role;
import setwright.geometry.plane.PlanBox;
import setwright.location.FoundAgain;
import setwright.location.budget.DatumWay;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;
import setwright.shop.Machine;

/** The table runs out of travel before the path with its approach and run-off is done, or the work meets the column. */
public final class TravelTooShort implements Check {
    @Override
    public String slug() {
        return "travel-too-short";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.onItsStage(plan, slug(), this::look);
    }

    /** What a path asks of a slide, or of the throat. */
    private record Asks(String subject, Figure figure, String what) {
        /** Travel is counted from the middle of the table, which is under the spindle at the middle of the slide. */
        static Asks travel(String subject, double from, double to, double travel) {
            double needed = 2 * Math.max(Math.abs(from), Math.abs(to));
            return new Asks(subject, Figure.atMost(travel, needed, Unit.MM), subject + " travel");
        }
    }

    private Finding look(Operations.In in, OperationStage on) {
        Asks worst = asks(in, on)
                .min(Comparator.comparingDouble(one -> one.figure().left()))
                .orElseThrow();
        Margin margin = Margin.of(
                slug(),
                in.place(worst.subject()),
                Words.sentence(worst.what()) + " for " + in.cutter(),
                worst.figure());
        return worst.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.STOP, message(in, on, worst));
    }

    private static Stream<Asks> asks(Operations.In in, OperationStage on) {
        Machine machine = in.plan().rows().machine();
        PlanBox path = on.path().box().plan();
        double behind = rear(in) - path.yLow();
        return Stream.of(
                Asks.travel(
                        "table", path.xLow(), path.xHigh(), machine.x().travel().inside()),
                Asks.travel(
                        "cross", path.yLow(), path.yHigh(), machine.y().travel().inside()),
                new Asks(
                        "throat",
                        Figure.atMost(machine.throat().inside(), behind, Unit.MM),
                        "room between spindle and column"));
    }

    /** How far to the column the device reaches; the table itself goes under the column. */
    private static double rear(Operations.In in) {
        return in.plan().part().setUp(in.setUp().id()).stream()
                .flatMap(stage -> stage.fixtures().stream())
                .filter(body -> body.role() != Role.TABLE)
                .mapToDouble(body -> body.solid().box().plan().yHigh())
                .max()
                .orElse(0);
    }

    private static String message(Operations.In in, OperationStage on, Asks asks) {
        Words words = new Words(in.plan());
        return in.cutter() + " " + in.at() + " wants "
                + words.length(asks.figure().value()) + " of " + asks.what()
                + " with its run-off, and the machine has "
                + words.length(asks.figure().limit())
                + ". The slide comes to its end in the cut: " + wayOut(in, on);
    }

    /** A path that is longer than the slide is reached from no place of the part. */
    private static String wayOut(Operations.In in, OperationStage on) {
        Words words = new Words(in.plan());
        Machine machine = in.plan().rows().machine();
        PlanBox path = on.path().box().plan();
        boolean tooLong = path.xHigh() - path.xLow() > machine.x().travel().inside()
                || path.yHigh() - path.yLow() > machine.y().travel().inside();
        return tooLong
                ? "take a machine with a longer slide, or cut what is reached, slide the part along and find its place again by"
                        + " a hole or an edge, " + words.fine(FoundAgain.error(DatumWay.EDGE_FINDER.halfWidth()))
                        + " out."
                : "change where the part sits, or turn it.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(new PackingChanges(plan, caution.setUp()).toTheMiddle());
        PlaceChanges place = new PlaceChanges(plan, caution.setUp());
        all.addAll(place.pathToTheMiddle());
        all.add(place.turned(1, "Turn the part a quarter turn."));
        return all;
    }
}
