package setwright.plan.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Body;
import setwright.geometry.Clearance;
import setwright.geometry.Move;
import setwright.geometry.Nearest;
import setwright.geometry.Role;
import setwright.geometry.ToolPath;
import setwright.geometry.ToolStack;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.KneeUse;
import setwright.plan.part.OperationStage;
import setwright.plan.part.ToolHeights;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.reach.KneeWindow;
import setwright.reach.QuillUse;

/** The room of one operation: what comes near, how knee and quill stand, where its tool is changed. */
public record RoomQuestion(
        String setUp,
        DrawnOperation operation,
        Optional<Earlier> earlier,
        Heights heights,
        List<Body> fixtures,
        OperationStage on) {
    /** A pair further apart than this is not listed, mm. */
    private static final double LISTED = 50;

    /** What a tool can meet that comes out under the part. */
    private static final List<Role> BENEATH =
            List.of(Role.PARALLEL, Role.PACKING, Role.VISE_BED, Role.FIXTURE, Role.TABLE);

    public RoomQuestion {
        fixtures = List.copyOf(fixtures);
    }

    OperationRoom answer(Rows rows) {
        KneeWindow window = KneeWindow.of(
                KneeUse.of(operation.id(), operation.kind(), toolHeights()), KneeUse.range(rows.machine()));
        List<Nearest> near = near(rows);
        double knee = operation.kneeHeight().value().inside();
        return new OperationRoom(
                operation.id(),
                near.isEmpty() ? null : near.get(0),
                near.stream().filter(one -> one.clearance() < LISTED).toList(),
                knee,
                window.low(),
                window.high(),
                on.lowest() + on.projection(),
                quillUsed(knee - kneeUp(knee, rows)),
                rows.machine().quillStroke().inside(),
                kneeUp(knee, rows),
                underPart(),
                new ChangeQuestion(this, rows).answer());
    }

    private ToolHeights toolHeights() {
        return new ToolHeights(on.workTop(), on.lowest(), on.crossing(), on.projection());
    }

    /** Everything against the fixtures; what is above the cutter also against the part as it stands. */
    private List<Nearest> near(Rows rows) {
        Body part = new Body("part", Role.PART, on.before().solid());
        List<Body> everything =
                Stream.concat(fixtures.stream(), Stream.of(part)).toList();
        List<Nearest> all = new ArrayList<>(Clearance.all(on.tool(), on.path(), fixtures));
        ToolStack above = on.tool().only(Role.HOLDER, Role.SPINDLE_NOSE, Role.QUILL);
        all.addAll(Clearance.all(above, on.path(), List.of(part)));
        boolean byQuill = operation.kind().inHole();
        ToolPath ofHead = Beyond.way(on, byQuill, operation.kneeHeight().value().inside());
        all.addAll(Clearance.all(Beyond.head(rows.machine(), on), ofHead, everything));
        rows.holder(operation.holder().value())
                .flatMap(Beyond::screw)
                .ifPresent(screw -> all.addAll(Clearance.all(screw, on.path(), everything)));
        all.sort(Comparator.comparingDouble(Nearest::clearance));
        return all;
    }

    private double kneeUp(double knee, Rows rows) {
        boolean inBites = operation.kind() == Operation.Kind.DRILL
                && operation.method().value() == Operation.Method.QUILL_IN_BITES;
        double out = QuillUse.out(knee, on.projection(), on.lowest());
        return inBites ? Math.max(0, out - rows.machine().quillStroke().inside()) : 0;
    }

    private Value quillUsed(double knee) {
        Given height = Given.of("knee height", knee, Unit.MM, setUp + "/" + operation.id() + "/kneeHeight");
        Given projection = Given.of("projection", on.projection(), Unit.MM, setUp + "/" + operation.id());
        Given lowest = Given.of("lowest tool point", on.lowest(), Unit.MM, setUp + "/" + operation.id());
        Worked out = QuillUse.OUT.of(height, projection, lowest);
        return operation.kind().inHole() ? out : Given.of("quill", 0, Unit.MM, "milling is done with the quill in");
    }

    /** For each hole that comes out below, how near the tool comes to what lies there. */
    private List<OperationRoom.UnderPart> underPart() {
        double below = heights.partBottom() - on.lowest();
        if (below <= 0 || on.spots().isEmpty()) {
            return List.of();
        }
        List<Body> beneath =
                fixtures.stream().filter(body -> BENEATH.contains(body.role())).toList();
        List<OperationRoom.UnderPart> found = new ArrayList<>();
        int spot = 0;
        for (Move move : on.path().moves()) {
            if (move.kind() == Move.Kind.PLUNGE) {
                addUnder(found, spot++, move, beneath);
            }
        }
        return found;
    }

    private void addUnder(List<OperationRoom.UnderPart> found, int spot, Move plunge, List<Body> beneath) {
        double below = heights.partBottom() - plunge.zTo();
        if (below <= 0) {
            return;
        }
        ToolPath down = new ToolPath(plunge.from(), List.of(plunge));
        for (Body body : beneath) {
            Clearance.nearest(on.tool().only(Role.CUTTER), down, List.of(body))
                    .ifPresent(
                            near -> found.add(new OperationRoom.UnderPart(body.name(), spot, below, near.clearance())));
        }
    }
}
