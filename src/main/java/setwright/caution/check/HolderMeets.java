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
import setwright.caution.Severity;
import setwright.geometry.Nearest;
import setwright.geometry.Role;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;

/** Holder, collet nut, nose or quill against a jaw, a clamp or the part as it stands. */
public final class HolderMeets implements Check {
    /** Asked between a holder and what clamps, mm (common practice). */
    static final double FROM_CLAMPS = 3;

    /** Asked between a holder and the stock it works on, mm (common practice). */
    static final double FROM_WORK = 1;

    private static final List<Role> HOLDING = List.of(Role.HOLDER, Role.COLLET_NUT);
    private static final List<Role> NOSE = List.of(Role.SPINDLE_NOSE, Role.QUILL, Role.HEAD);
    private static final List<Role> TURNING =
            Stream.of(HOLDING, NOSE).flatMap(List::stream).toList();

    private static final List<Role> STANDING = Stream.concat(
                    Clamps.AND_STOPS.stream(), Stream.of(Role.FIXTURE, Role.ANGLE_PLATE, Role.VISE_HANDLE))
            .toList();

    private final String slug;
    private final List<Role> sections;
    private final List<Role> bodies;
    private final double asked;

    private HolderMeets(String slug, List<Role> sections, List<Role> bodies, double asked) {
        this.slug = slug;
        this.sections = sections;
        this.bodies = bodies;
        this.asked = asked;
    }

    public static HolderMeets jaw() {
        return new HolderMeets("holder-meets-jaw", TURNING, List.of(Role.SOLID_JAW, Role.MOVING_JAW), FROM_CLAMPS);
    }

    /** Straps with their studs, nuts and steps, stops, and whatever device stands there. */
    public static HolderMeets clamp() {
        return new HolderMeets("holder-meets-clamp", TURNING, STANDING, FROM_CLAMPS);
    }

    public static HolderMeets work() {
        return new HolderMeets("holder-meets-work", HOLDING, List.of(Role.PART), FROM_WORK);
    }

    /** The spindle itself, past a cutter that is held right at its nose. */
    public static HolderMeets nose() {
        return new HolderMeets("nose-meets-work", NOSE, List.of(Role.PART), FROM_WORK);
    }

    @Override
    public String slug() {
        return slug;
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsRoom(plan, slug(), this::look);
    }

    /** The flange of a saw against the work is judged by its reach. */
    private boolean meant(Operations.In in) {
        return sections != HOLDING || in.operation().kind() != Operation.Kind.SAW;
    }

    private Finding look(Operations.In in, OperationRoom room) {
        if (!meant(in)) {
            return Finding.HOLDS;
        }
        return nearest(room).map(near -> judged(in, near)).orElse(Finding.HOLDS);
    }

    /** The pairs of a room stand nearest first. */
    private Optional<Nearest> nearest(OperationRoom room) {
        return room.touches().stream()
                .filter(near -> sections.contains(near.section().role())
                        && bodies.contains(near.body().role()))
                .findFirst();
    }

    private Finding judged(Operations.In in, Nearest near) {
        String subject = near.body().role().word().replace(' ', '-');
        String body = near.body().name();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), subject, body),
                Words.sentence(near.section().name()) + " to the " + body,
                Figure.atLeast(asked, near.clearance(), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, near.touches() ? Severity.STOP : Severity.CAUTION, message(in, near));
    }

    private String message(Operations.In in, Nearest near) {
        Words words = new Words(in.plan());
        String how = near.touches()
                ? " runs " + words.length(-near.clearance()) + " into the "
                : " passes " + words.length(near.clearance()) + " from the ";
        return Words.sentence(near.section().name()) + how + near.body().name() + " " + in.at() + "; "
                + words.length(asked)
                + " is asked. What turns and touches throws the part: more stick-out, or another holder.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>();
        Figure figure = caution.figure();
        if (figure != null) {
            all.addAll(tool.longer(figure.limit() - figure.value()));
        }
        all.addAll(tool.otherHolders());
        if (bodies.contains(Role.STRAP)) {
            all.addAll(StrapChanges.away(plan, caution));
        }
        if (bodies.contains(Role.SOLID_JAW)) {
            all.addAll(new PackingChanges(plan, caution.setUp()).higher());
        }
        return all;
    }
}
