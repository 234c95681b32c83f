package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Body;
import setwright.geometry.Role;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;

/** A drill, reamer or tap that breaks through into a parallel. One caution a set-up: thick parallels are one cause. */
public final class DrillMeetsParallel implements Check {
    /** Asked between a cutter and packing, mm (common practice). */
    static final double ASKED = 0.5;

    @Override
    public String slug() {
        return "drill-meets-parallel";
    }

    /** An operation and the parallel that it comes nearest to. */
    private record Meeting(Operations.In in, OperationRoom.UnderPart under) {
        double clearance() {
            return under.clearance();
        }

        boolean tooNear() {
            return clearance() < ASKED;
        }

        boolean touches() {
            return clearance() <= 0;
        }
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            Operations.in(plan, setUp)
                    .filter(DrillMeetsParallel::couldNotLook)
                    .forEach(in -> found.add(in.unlooked(slug(), Operations.FOR_ROOM)));
            if (Operations.in(plan, setUp).anyMatch(DrillMeetsParallel::canLook)) {
                parallels(plan, setUp).ifPresent(parallels -> found.add(look(plan, setUp, parallels)));
            }
        }
        return found;
    }

    private static boolean couldNotLook(Operations.In in) {
        return !canLook(in)
                && Holes.of(in.operation(), in.plan().job()).findAny().isPresent();
    }

    private static boolean canLook(Operations.In in) {
        return in.plan().room().operation(in.operation().id()).isPresent();
    }

    /** The names of the parallels; empty where the part does not stand on any. */
    private static Optional<List<String>> parallels(Plan plan, DrawnSetUp setUp) {
        return plan.part()
                .setUp(setUp.id())
                .map(stage -> stage.fixtures().stream()
                        .filter(body -> body.role() == Role.PARALLEL)
                        .map(Body::name)
                        .toList())
                .filter(names -> !names.isEmpty());
    }

    private Finding look(Plan plan, DrawnSetUp setUp, List<String> parallels) {
        List<Meeting> all = Operations.in(plan, setUp)
                .flatMap(in -> meeting(in, parallels).stream())
                .toList();
        int tooNear = (int) all.stream().filter(Meeting::tooNear).count();
        return all.stream()
                .min(Comparator.comparingDouble(Meeting::clearance))
                .map(nearest -> judged(nearest, tooNear))
                .orElse(Finding.HOLDS);
    }

    private static Optional<Meeting> meeting(Operations.In in, List<String> parallels) {
        return in.plan().room().operation(in.operation().id()).stream()
                .flatMap(room -> room.packing().stream())
                .filter(under -> parallels.contains(under.body()))
                .min(Comparator.comparingDouble(OperationRoom.UnderPart::clearance))
                .map(under -> new Meeting(in, under));
    }

    private Finding judged(Meeting nearest, int tooNear) {
        Words words = new Words(nearest.in().plan());
        String body = nearest.under().body();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(
                        nearest.in().setUp().id(), nearest.in().operation().id(), "parallels", body),
                words.cutter(nearest.in().operation()) + " to the " + body,
                Figure.atLeast(ASKED, nearest.clearance(), Unit.MM));
        return nearest.tooNear()
                ? Finding.fails(
                        margin,
                        nearest.touches() ? Severity.STOP : Severity.CAUTION,
                        message(words, nearest, tooNear - 1))
                : Finding.holds(margin);
    }

    private static String message(Words words, Meeting worst, int others) {
        String how = worst.touches()
                ? " goes " + words.length(-worst.clearance()) + " into the "
                : " passes " + words.length(worst.clearance()) + " from the ";
        return words.cutter(worst.in().operation()) + how + worst.under().body() + " below " + hole(worst) + " "
                + worst.in().at() + "; " + words.length(ASKED) + " is asked." + more(others)
                + " The tool chips and the parallel is spoilt: take thinner parallels or push them outward.";
    }

    private static String hole(Meeting worst) {
        int holes = worst.in()
                .plan()
                .part()
                .operation(worst.in().operation().id())
                .map(stage -> stage.spots().size())
                .orElse(1);
        return holes == 1 ? "its hole" : "hole " + (worst.under().spot() + 1) + " of " + holes;
    }

    private static String more(int others) {
        return switch (others) {
            case 0 -> "";
            case 1 -> " One more tool comes too near.";
            default -> " " + others + " more tools come too near.";
        };
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        PackingChanges packing = new PackingChanges(plan, caution.setUp());
        List<Proposal> all = new ArrayList<>(packing.againstJaws());
        all.addAll(packing.thinner());
        all.addAll(packing.higher());
        return all;
    }
}
