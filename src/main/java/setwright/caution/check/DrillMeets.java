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
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;

/**
 * A drill, reamer or tap that breaks through into a parallel, or into what lies further below. One caution a set-up: thick
 * or low parallels are one cause.
 */
public final class DrillMeets implements Check {
    /** Asked between a cutter and packing, mm (common practice). */
    static final double ASKED = 0.5;

    private final String slug;
    private final String subject;
    private final List<Role> roles;

    private DrillMeets(String slug, String subject, Role... roles) {
        this.slug = slug;
        this.subject = subject;
        this.roles = List.of(roles);
    }

    public static DrillMeets parallel() {
        return new DrillMeets("drill-meets-parallel", "parallels", Role.PARALLEL, Role.PACKING);
    }

    /** Also the table or the device that the part stands on. */
    public static DrillMeets bed() {
        return new DrillMeets("drill-meets-vise-bed", "bed", Role.VISE_BED, Role.FIXTURE, Role.TABLE);
    }

    @Override
    public String slug() {
        return slug;
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
                    .filter(DrillMeets::couldNotLook)
                    .forEach(in -> found.add(in.unlooked(slug(), Operations.FOR_ROOM)));
            if (Operations.in(plan, setUp).anyMatch(DrillMeets::canLook)) {
                bodies(plan, setUp).ifPresent(bodies -> found.add(look(plan, setUp, bodies)));
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

    /** The names of what lies below; empty where there is nothing of its kind. */
    private Optional<List<String>> bodies(Plan plan, DrawnSetUp setUp) {
        return plan.part()
                .setUp(setUp.id())
                .map(stage -> stage.fixtures().stream()
                        .filter(body -> roles.contains(body.role()))
                        .map(Body::name)
                        .toList())
                .filter(names -> !names.isEmpty());
    }

    private Finding look(Plan plan, DrawnSetUp setUp, List<String> bodies) {
        List<Meeting> all = Operations.in(plan, setUp)
                .flatMap(in -> meeting(in, bodies).stream())
                .toList();
        int tooNear = (int) all.stream().filter(Meeting::tooNear).count();
        return all.stream()
                .min(Comparator.comparingDouble(Meeting::clearance))
                .map(nearest -> judged(nearest, tooNear))
                .orElse(Finding.HOLDS);
    }

    private static Optional<Meeting> meeting(Operations.In in, List<String> bodies) {
        return in.plan().room().operation(in.operation().id()).stream()
                .flatMap(room -> room.packing().stream())
                .filter(under -> bodies.contains(under.body()))
                .min(Comparator.comparingDouble(OperationRoom.UnderPart::clearance))
                .map(under -> new Meeting(in, under));
    }

    private Finding judged(Meeting nearest, int tooNear) {
        Words words = new Words(nearest.in().plan());
        String body = nearest.under().body();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(
                        nearest.in().setUp().id(), nearest.in().operation().id(), subject, body),
                words.cutter(nearest.in().operation()) + " to the " + body,
                Figure.atLeast(ASKED, nearest.clearance(), Unit.MM));
        return nearest.tooNear()
                ? Finding.fails(
                        margin,
                        nearest.touches() ? Severity.STOP : Severity.CAUTION,
                        message(words, nearest, tooNear - 1))
                : Finding.holds(margin);
    }

    private String message(Words words, Meeting worst, int others) {
        String how = worst.touches()
                ? " goes " + words.length(-worst.clearance()) + " into the "
                : " passes " + words.length(worst.clearance()) + " from the ";
        return words.cutter(worst.in().operation()) + how + worst.under().body() + " below " + hole(worst) + " "
                + worst.in().at() + "; " + words.length(ASKED) + " is asked." + more(others)
                + wayOut(worst);
    }

    private String wayOut(Meeting worst) {
        boolean inVise = worst.in().setUp().holding().kind() == DrawnHolding.Kind.VISE;
        if (under(Role.PARALLEL)) {
            return inVise
                    ? " The tool chips and the parallel is spoilt: take thinner parallels or push them outward."
                    : " The tool chips and the packing is spoilt: take it from under the hole.";
        }
        return inVise
                ? " The tool chips and the bed is marked for good: take higher parallels."
                : " The tool chips and the " + worst.under().body()
                        + " is marked for good: take packing under the part, or bring the hole over a slot.";
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

    private boolean under(Role role) {
        return roles.contains(role);
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        PackingChanges packing = new PackingChanges(plan, caution.setUp());
        if (!packing.inVise()) {
            return packing.onTable();
        }
        List<Proposal> all = new ArrayList<>();
        if (under(Role.PARALLEL)) {
            all.addAll(packing.againstJaws());
            all.addAll(packing.thinner());
        } else if (packing.inVise() && !packing.vise().onParallels()) {
            all.addAll(packing.thinner());
        }
        all.addAll(packing.higher());
        return all;
    }
}
