package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.Limit;
import setwright.geometry.Nearest;
import setwright.job.DrawnOperation;
import setwright.job.OperationField;
import setwright.plan.cut.OperationCut;
import setwright.plan.hold.OperationHold;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Measure;
import setwright.quantity.Value;

/** What the one operation of the quick check comes to, in the order in which one asks at the machine. */
final class QuickAnswers {
    private static final double BEYOND = 99;

    private final Planned planned;
    private final List<Quick.Answer> answers = new ArrayList<>();

    QuickAnswers(Planned planned) {
        this.planned = planned;
    }

    List<Quick.Answer> all() {
        planned.operation(QuickJob.OPERATION).ifPresent(this::speedAndFeed);
        planned.plan().cut().operation(QuickJob.OPERATION).ifPresent(this::depth);
        planned.plan().room().operation(QuickJob.OPERATION).ifPresent(this::room);
        planned.plan().hold().operation(QuickJob.OPERATION).ifPresent(this::hold);
        return List.copyOf(answers);
    }

    private void speedAndFeed(DrawnOperation operation) {
        var cut = planned.plan().cut().operation(operation.id());
        add(
                "speed",
                "Speed",
                planned.value(operation, OperationField.SPEED).value().text(),
                cut.map(OperationCut::wantedSpeed)
                        .map(wanted -> "the edge would take " + printed(wanted))
                        .orElse(""));
        add(
                "feed",
                "Feed",
                planned.value(operation, OperationField.FEED).value().text(),
                cut.map(this::perEdge).orElse(""));
    }

    private String perEdge(OperationCut cut) {
        Value turn = cut.secondsPerTurn();
        String edge = printed(cut.feedPerEdge());
        return turn == null ? edge : edge + "; " + printed(turn) + " for a turn of the handle";
    }

    private void depth(OperationCut cut) {
        Limit binds = cut.governing();
        String first = binds == null
                ? ""
                : "binds first: " + binds.name().words() + ", " + Math.round(binds.used() * 100) + " % of its limit";
        String passes = cut.passes() > 1 ? "in " + cut.passes() + " passes; " : "";
        add("depth", "Depth", length(cut.depth()), passes + first);
    }

    private void room(OperationRoom room) {
        Nearest nearest = room.nearest();
        String change = room.change().works() ? "" : "; no room to change the tool";
        if (nearest == null) {
            add("room", "Room", "free", "nothing near" + change);
        } else {
            add(
                    "room",
                    "Room",
                    length(nearest.clearance()),
                    nearest.section().name() + " to " + nearest.body().name() + change);
        }
    }

    private void hold(OperationHold hold) {
        String gives = hold.motion().isEmpty() ? "" : "; it " + hold.motion() + " first";
        add(
                "hold",
                "Held",
                factor(hold.factor().expected()) + " times",
                "the cut; on a bad day " + factor(hold.factor().pessimistic()) + gives);
    }

    private String factor(double factor) {
        return factor >= BEYOND ? "99 or more" : planned.printing().factor(factor);
    }

    private void add(String key, String name, String printed, String said) {
        answers.add(new Quick.Answer(key, name, printed, said));
    }

    private String printed(Value value) {
        return planned.printing().of(value);
    }

    private String length(double mm) {
        return planned.printing().of(Measure.LENGTH, mm);
    }
}
