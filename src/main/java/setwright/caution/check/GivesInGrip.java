package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.hold.GripRangeWords;
import setwright.plan.hold.OperationHold;
import setwright.quantity.Printing;

/** The cut beats the grip: the part slides, lifts or tips. One caution a set-up and motion, for the operation held least. */
public final class GivesInGrip implements Check {
    private final String slug;
    private final List<String> motions;

    private GivesInGrip(String slug, String... motions) {
        this.slug = slug;
        this.motions = List.of(motions);
    }

    /** Also where nothing holds even without the cut, and no motion can be named. */
    public static GivesInGrip slides() {
        return new GivesInGrip("slides-in-grip", "slides", "turns", "");
    }

    public static GivesInGrip lifts() {
        return new GivesInGrip("lifts-in-grip", "lifts");
    }

    public static GivesInGrip tips() {
        return new GivesInGrip("tips-in-grip", "tips");
    }

    @Override
    public String slug() {
        return slug;
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            Operations.in(plan, setUp)
                    .filter(in -> in.cuts()
                            && plan.hold().operation(in.operation().id()).isEmpty())
                    .forEach(in -> found.add(in.unlooked(slug, "the device, the cutter and its load")));
            if (held(plan, setUp).findAny().isPresent()) {
                found.add(least(plan, setUp).map(grip -> judged(plan, grip)).orElse(Finding.HOLDS));
            }
        }
        return found;
    }

    private static Stream<OperationHold> held(Plan plan, DrawnSetUp setUp) {
        return plan.hold().operations().stream().filter(hold -> hold.setUp().equals(setUp.id()));
    }

    private Optional<GripMargin> least(Plan plan, DrawnSetUp setUp) {
        return held(plan, setUp)
                .filter(hold -> motions.contains(hold.motion()))
                .map(GripMargin::of)
                .min(GripMargin.LEAST_FIRST);
    }

    private Finding judged(Plan plan, GripMargin grip) {
        OperationHold hold = grip.hold();
        String cutter = new Words(plan).cutter(Operations.operation(plan, hold.setUp(), hold.operation()));
        Margin margin = Margin.of(
                        slug,
                        Caution.Place.worstAt(hold.setUp(), hold.operation(), "grip", "grip"),
                        "Grip against " + cutter,
                        grip.deciding())
                .between(grip.band());
        return switch (grip.verdict()) {
            case HOLDS -> Finding.holds(margin);
            case CAUTION -> Finding.fails(margin, Severity.CAUTION, message(plan, grip));
            case STOP -> Finding.fails(margin, Severity.STOP, message(plan, grip));
        };
    }

    private static String message(Plan plan, GripMargin grip) {
        return grip.hold().factor().expected() > 0 ? gives(plan, grip) : standsNot(plan, grip.hold());
    }

    private static String gives(Plan plan, GripMargin margin) {
        OperationHold hold = margin.hold();
        Words words = new Words(plan);
        String first = hold.firstToGive().isEmpty() ? "" : ", first at the " + hold.firstToGive();
        Printing print = words.printing();
        return "The grip bears " + print.factor(hold.factor().expected()) + " times the cut, "
                + print.factor(hold.factor().pessimistic()) + " on a bad day "
                + Words.at(hold.setUp(), hold.operation()) + "; " + print.factor(margin.askedUsually()) + " and "
                + print.factor(margin.askedOnABadDay()) + " are asked. The part " + hold.motion() + first
                + ": grip harder or deeper, or take less." + range(plan, hold.setUp());
    }

    /** How hard it would have to be held, and how hard it can be. */
    private static String range(Plan plan, String setUp) {
        return plan.gripRange(setUp)
                .map(range -> " " + Words.sentence(new GripRangeWords(range, new Words(plan).printing()).text()) + ".")
                .orElse("");
    }

    private static String standsNot(Plan plan, OperationHold hold) {
        String operation = new Words(plan).cutter(Operations.operation(plan, hold.setUp(), hold.operation()));
        return "The part does not stay where it is even before the cut " + Words.at(hold.setUp(), hold.operation())
                + ": the grip bears 0 times the load of " + operation + ". Grip deeper, or put packing under it.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(new GripChanges(plan, caution.setUp()).harder());
        all.addAll(new PackingChanges(plan, caution.setUp()).lower());
        all.addAll(CutChanges.of(plan, caution).shallower());
        return all;
    }
}
