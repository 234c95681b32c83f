package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Nearest;
import setwright.geometry.Role;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.quantity.Unit;

/**
 * A cutter or its shank that cuts into what holds the part. One caution a set-up, for the operation that goes nearest: a
 * part that sits too low is one cause. Down beside a jaw, further out than is asked, is ordinary work.
 */
public final class CutterMeets implements Check {
    /** Asked between a cutter and a jaw, packing or a stop, mm (common practice). */
    static final double FROM_JAW = 0.5;

    private static final List<Role> CUTTING = List.of(Role.CUTTER, Role.SHANK);

    private final String slug;
    private final String subject;
    private final List<Role> bodies;
    private final double asked;

    private CutterMeets(String slug, String subject, List<Role> bodies, double asked) {
        this.slug = slug;
        this.subject = subject;
        this.bodies = bodies;
        this.asked = asked;
    }

    public static CutterMeets jaw() {
        return new CutterMeets("cutter-meets-jaw", "jaws", List.of(Role.SOLID_JAW, Role.MOVING_JAW), FROM_JAW);
    }

    /** What lies under the part, for every tool that does not come down into a hole; those have checks of their own. */
    public static CutterMeets packing() {
        return new CutterMeets(
                "cutter-meets-packing",
                "packing",
                List.of(
                        Role.PARALLEL,
                        Role.PACKING,
                        Role.VISE_BED,
                        Role.VISE_SCREW,
                        Role.FIXTURE,
                        Role.ANGLE_PLATE,
                        Role.TABLE),
                FROM_JAW);
    }

    public static CutterMeets clamp() {
        return new CutterMeets("cutter-meets-clamp", "clamps", Clamps.STRAPS, HolderMeets.FROM_CLAMPS);
    }

    public static CutterMeets stop() {
        return new CutterMeets("cutter-meets-stop", "stop", Clamps.STOPS, FROM_JAW);
    }

    @Override
    public String slug() {
        return slug;
    }

    /** An operation and the body that its cutter comes nearest to. */
    private record Meeting(Operations.In in, Nearest near) {
        double clearance() {
            return near.clearance();
        }
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            List<Operations.In> meant =
                    Operations.in(plan, setUp).filter(this::meant).toList();
            meant.stream().filter(in -> !in.hasRoom()).forEach(in -> found.add(in.unlooked(slug, Operations.FOR_ROOM)));
            if (meant.stream().anyMatch(Operations.In::hasRoom)) {
                found.add(nearest(meant.stream()).map(this::judged).orElse(Finding.HOLDS));
            }
        }
        return found;
    }

    private boolean meant(Operations.In in) {
        return !bodies.contains(Role.PARALLEL) || !in.makesHoles();
    }

    private Optional<Meeting> nearest(Stream<Operations.In> operations) {
        return operations.flatMap(this::meetings).min(Comparator.comparingDouble(Meeting::clearance));
    }

    /** A strap that lies on the cut itself is said by itself. */
    private Stream<Meeting> meetings(Operations.In in) {
        List<String> onTheCut = bodies.contains(Role.STRAP) ? ClampOnTheCut.names(in) : List.of();
        return in.room().stream()
                .flatMap(room -> room.touches().stream())
                .filter(near -> CUTTING.contains(near.section().role()))
                .filter(near -> bodies.contains(near.body().role()))
                .filter(near -> !onTheCut.contains(near.body().name()))
                .map(near -> new Meeting(in, near));
    }

    private Finding judged(Meeting meeting) {
        Operations.In in = meeting.in();
        String body = meeting.near().body().name();
        Margin margin = Margin.of(
                slug,
                Caution.Place.worstAt(in.setUp().id(), in.operation().id(), subject, body),
                in.cutter() + " to the " + body,
                Figure.atLeast(asked, meeting.clearance(), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, meeting.near().touches() ? Severity.STOP : Severity.CAUTION, message(meeting));
    }

    private String message(Meeting meeting) {
        Words words = new Words(meeting.in().plan());
        String how = meeting.near().touches()
                ? " cuts " + words.length(-meeting.clearance()) + " into the "
                : " passes " + words.length(meeting.clearance()) + " from the ";
        return meeting.in().cutter() + how + meeting.near().body().name() + " "
                + meeting.in().at() + "; " + words.length(asked)
                + " is asked. It breaks the cutter and shifts the part: " + wayOut();
    }

    private String wayOut() {
        return switch (slug) {
            case "cutter-meets-clamp" -> "bring the strap elsewhere, turn it, or take a smaller cutter.";
            case "cutter-meets-stop" -> "take a lower stop, or bring it to the other end.";
            default -> "take higher packing, or cut less deep or wide.";
        };
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        PackingChanges packing = new PackingChanges(plan, caution.setUp());
        List<Proposal> all = new ArrayList<>();
        if (bodies.contains(Role.SOLID_JAW)) {
            all.addAll(packing.higher());
        } else if (bodies.contains(Role.PARALLEL)) {
            all.addAll(packing.againstJaws());
            all.addAll(packing.thinner());
        } else if (bodies.contains(Role.STRAP)) {
            all.addAll(StrapChanges.away(plan, caution));
        } else {
            all.addAll(new StopChanges(plan, caution.setUp()).otherEnd(caution.subjectText()));
        }
        return all;
    }
}
