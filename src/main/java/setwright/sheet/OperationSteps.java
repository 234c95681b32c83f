package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.drawing.HoleNumbers;
import setwright.geometry.plane.Point2;
import setwright.job.Divided;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Operation;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.plan.part.SetUpStage;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Measure;
import setwright.shop.Axis;
import setwright.shop.Holder;

/** The steps of one operation: tool in, height, speed, cut. */
final class OperationSteps {
    private static final double SAME = 1e-6;

    private final Shown shown;
    private final DrawnSetUp setUp;
    private final DrawnOperation operation;
    private final Optional<DrawnOperation> before;
    private final Steps.Writer writer;
    private final List<Step> steps = new ArrayList<>();

    OperationSteps(Shown shown, DrawnSetUp setUp, DrawnOperation operation, Optional<DrawnOperation> before) {
        this.shown = shown;
        this.setUp = setUp;
        this.operation = operation;
        this.before = before;
        writer = new Steps.Writer(setUp.id(), operation.id());
    }

    List<Step> steps() {
        tool();
        knee();
        touchOff();
        speed();
        cut();
        return steps;
    }

    private void tool() {
        if (same(DrawnOperation::cutter)) {
            return;
        }
        Optional<Holder> holder = shown.plan().rows().holder(operation.holder().value());
        steps.add(writer.step(
                        "tool",
                        Step.Kind.TOOL,
                        shown.cutter(operation) + " in " + shown.holder(operation) + ", "
                                + operation.stickOut().value().text() + " out.")
                .doing(holder.map(row -> gripping(row.style())).orElse(""))
                .checking(holder.map(row -> wrench(row.style())).orElse("") + "; runs true by hand")
                .biting(change())
                .written());
    }

    private boolean same(java.util.function.Function<DrawnOperation, setwright.job.Drawn<String>> of) {
        return before.map(of)
                .map(drawn -> drawn.value().equals(of.apply(operation).value()))
                .orElse(false);
    }

    private static String gripping(Holder.Style style) {
        return switch (style) {
            case SPINDLE_COLLET -> "collet up by the drawbar, cutter held from below";
            case COLLET_CHUCK -> "snap the collet into the nut first, then the cutter; tighten";
            case SET_SCREW -> "flat to the screw, pulled down, screw tight";
            case DRILL_CHUCK_KEYED -> "tighten at all three holes";
            case DRILL_CHUCK_KEYLESS -> "tighten by hand";
            case FACE_MILL_ARBOR, SHELL_MILL_ARBOR -> "drive keys in, screw tight";
            case SCREWED_SHANK_CHUCK -> "nut almost home, cutter screwed in to the centre, then the nut";
            case SHRINK -> "stays shrunk in; bore and shank wiped before";
            case FLY_CUTTER_BODY -> "bit set to its circle, screws tight, body turned by hand past the work";
            case BORING_HEAD -> "bar to its stop, screws tight, gib screw nipped";
            case STUB_ARBOR -> "collars clean, key in, nut tight";
            case TAPER_SOCKET -> "socket and shank clean, tang in line, seated by a tap of the mallet";
            case TAPPING_HEAD -> "tap to the square, clutch set, arm against its stop";
            case FLOATING_REAMER_HOLDER -> "float moves by hand, reamer tight";
        };
    }

    private static String wrench(Holder.Style style) {
        return switch (style) {
            case DRILL_CHUCK_KEYED -> "drawbar tight and its wrench off, chuck key out";
            case SPINDLE_COLLET,
                    COLLET_CHUCK,
                    SET_SCREW,
                    DRILL_CHUCK_KEYLESS,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER -> "drawbar tight and its wrench off";
        };
    }

    private String change() {
        return room().filter(found -> !found.change().stays())
                .map(found -> found.change().works()
                        ? where(found.change())
                        : "no place to change it: "
                                + shown.length(found.change().room()) + " free, "
                                + shown.length(found.change().needed()) + " needed")
                .orElse("");
    }

    /** Where it comes out, and what the way back there wants. */
    private String where(OperationRoom.ChangeRoom change) {
        return change.lost().place() > 0
                ? "change it " + change.where() + "; come back to the reading from the same side"
                : "room to change it " + change.where();
    }

    private Optional<OperationRoom> room() {
        return shown.plan().room().operation(operation.id());
    }

    private void knee() {
        double height = operation.kneeHeight().value().inside();
        boolean stays = before.map(
                        earlier -> Math.abs(earlier.kneeHeight().value().inside() - height) < SAME)
                .orElse(false);
        if (!stays) {
            steps.add(writer.step(
                            "knee",
                            Step.Kind.HEIGHT,
                            "Knee: spindle nose " + shown.length(height)
                                    + " over the table, quill in. Come up to it and lock.")
                    .checking("knee locked")
                    .written());
        }
    }

    private void touchOff() {
        if (same(DrawnOperation::cutter)) {
            return;
        }
        steps.add(writer.step("touch-off", Step.Kind.HEIGHT, "Touch off on the top of the part, spindle off.")
                .doing("paper between; its thickness is in the sum")
                .checking(quillStop())
                .written());
    }

    private String quillStop() {
        return room().map(found -> found.quillUsed().inside())
                .filter(quill -> quill > 0)
                .map(quill -> "quill stop so that the quill comes out " + shown.length(quill))
                .orElse("quill in and locked");
    }

    private void speed() {
        double turning = operation.speed().value().inside();
        if (turning <= 0) {
            steps.add(writer.step("speed", Step.Kind.SPEED, "Spindle off, out of gear: turned by hand.")
                    .written());
            return;
        }
        String last = before.map(earlier -> earlier.speed().value().inside())
                .filter(earlier -> earlier > 0 && Math.abs(earlier - turning) > SAME)
                .map(earlier -> " (last tool ran " + shown.printing().number(Measure.SPINDLE_SPEED, earlier) + ")")
                .orElse("");
        steps.add(writer.step("speed", Step.Kind.SPEED, shown.speed(turning) + " for this tool" + last + ".")
                .doing("belt or gear at standstill; feed lever neutral")
                .checking("it turns the right way round in this gear")
                .written());
    }

    private void cut() {
        Optional<SetUpStage> stage = shown.plan().part().setUp(setUp.id());
        Optional<OperationStage> on = shown.plan().part().operation(operation.id());
        if (stage.isEmpty() || on.isEmpty()) {
            round();
            return;
        }
        if (on.get().spots().isEmpty()) {
            steps.add(passes());
            round();
            return;
        }
        HoleNumbers numbers = HoleNumbers.of(stage.get());
        Positions positions = new Positions(shown, setUp, stage.get().heights());
        for (Point2 spot : on.get().spots()) {
            steps.add(hole(numbers.at(spot), positions.both(spot)));
            steps.addAll(trials(numbers.at(spot)));
        }
    }

    /** On from division to division, where the device divides so. */
    private void round() {
        shown.plan()
                .index()
                .operation(operation.id())
                .filter(index -> !index.positions().isEmpty())
                .ifPresent(index -> shown.plan().job().plan().features().stream()
                        .filter(feature -> feature.id().equals(index.feature()))
                        .map(Divided.class::cast)
                        .forEach(divided -> steps.addAll(new IndexSteps(writer, divided, index).steps())));
    }

    private Step passes() {
        String how = shown.plan()
                .cut()
                .operation(operation.id())
                .map(found -> " " + count(found) + ", " + shown.length(found.depth()) + " deep.")
                .orElse("");
        writer.step("cut", Step.Kind.CUT, shown.what(operation) + "." + how + " " + shown.feed(operation) + ".")
                .doing("wind the way by hand once, spindle off: path clear; then locks of Y and knee nipped")
                .checking("glasses on, guards in place, no gloves or sleeves")
                .biting(margin());
        return (before.isEmpty() ? writer.holding() : writer).written();
    }

    private static String count(OperationCut cut) {
        return cut.passes() == 1 ? "1 pass" : cut.passes() + " passes";
    }

    private Step hole(int number, String place) {
        writer.step("hole-" + number, Step.Kind.CUT, verb() + " hole " + number + ". " + place + ".")
                .doing(dials() + "; lock X and Y; " + shown.feed(operation)
                        + HoleWords.of(shown, operation).map(HoleWords::act).orElse(""))
                .checking("the place once more before the point touches; glasses on")
                .biting(margin())
                .inHole(number);
        return (before.isEmpty() && number == 1 ? writer.holding() : writer).written();
    }

    /** The cuts of a boring head, one after the other. */
    private List<Step> trials(int number) {
        List<Step> found = new ArrayList<>();
        HoleWords.of(shown, operation)
                .filter(words -> !words.work().trials().isEmpty())
                .map(words -> new BoringWords(shown, operation, words.work()))
                .ifPresent(bored -> {
                    for (String text : bored.steps()) {
                        int cut = found.size() + 1;
                        found.add(writer.step("hole-" + number + "-cut-" + cut, Step.Kind.CUT, text)
                                .doing("head set at standstill, its screw nipped; " + bored.counting())
                                .checking("the bar clears the bore all round by hand before the spindle turns")
                                .inHole(number)
                                .written());
                    }
                });
        return found;
    }

    private String verb() {
        boolean byHand = operation.method().value().byHand();
        return operation.kind() == Operation.Kind.TAP && byHand
                ? "Tap by hand"
                : operation.kind().verb();
    }

    private String dials() {
        var machine = shown.plan().rows().machine();
        return machine.x().read() == Axis.ReadBy.DIAL || machine.y().read() == Axis.ReadBy.DIAL
                ? "come from the left and the front, backlash taken up"
                : "go to the reading";
    }

    private String margin() {
        return room().flatMap(found -> Optional.ofNullable(found.nearest()))
                .map(near -> near.touches()
                        ? "meets the " + near.body().name() + " by " + shown.clearance(-near.clearance())
                        : "leaves " + shown.clearance(near.clearance()) + " to the "
                                + near.body().name())
                .orElse("");
    }
}
