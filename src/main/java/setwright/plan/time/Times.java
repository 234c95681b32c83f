package setwright.plan.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import setwright.batch.Batch;
import setwright.batch.BatchTime;
import setwright.batch.CutTime;
import setwright.cutting.TrialCuts.TrialCut;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Operation;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.cut.CutPlan;
import setwright.plan.cut.HoleWork;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.plan.room.RoomPlan;
import setwright.plan.room.SetUpRoom;
import setwright.shop.Holder;

/** Adds up the time of the cuts and of the hands around them; one part complete after the other. */
public final class Times {
    /** Approach at feed before each cut, mm (common practice). */
    private static final double APPROACH = 2;

    private final Rows rows;
    private final PartPlan part;
    private final CutPlan cut;
    private final Set<HandStep> asked = new TreeSet<>();

    private Times(Rows rows, PartPlan part, CutPlan cut) {
        this.rows = rows;
        this.part = part;
        this.cut = cut;
    }

    public static TimePlan of(DrawnUp drawnUp, Rows rows, PartPlan part, CutPlan cut, RoomPlan room) {
        Times times = new Times(rows, part, cut);
        List<TimePlan.OperationTime> operations = new ArrayList<>();
        List<Batch> batches = new ArrayList<>();
        int parts = drawnUp.job().plan().numberOff();
        for (DrawnSetUp drawn : drawnUp.setUps()) {
            List<TimePlan.OperationTime> here = times.operations(drawn);
            operations.addAll(here);
            double load = times.hand(HoldingSteps.load(drawn.holding())) + times.hand(HandStep.CLEAN_VISE);
            batches.add(batch(parts, here, load, times.setUp(drawn, room)));
        }
        double setUp = batches.stream().mapToDouble(Batch::setUp).sum();
        double each = batches.stream()
                .mapToDouble(batch -> batch.load() + batch.cut() + batch.tools() * batch.toolChange())
                .sum();
        double all = batches.stream().mapToDouble(BatchTime::eachPartComplete).sum();
        return new TimePlan(operations, batches, setUp, each, all, times.missing());
    }

    private static Batch batch(int parts, List<TimePlan.OperationTime> operations, double load, double setUp) {
        double changes =
                operations.stream().mapToDouble(TimePlan.OperationTime::change).sum();
        double whole =
                operations.stream().mapToDouble(TimePlan.OperationTime::whole).sum();
        int tools = Math.max(1, operations.size());
        return new Batch(parts, tools, changes / tools, load, whole - changes, setUp);
    }

    /** Once: what the holding takes, edges found, each tool touched off, the first part measured. */
    private double setUp(DrawnSetUp setUp, RoomPlan room) {
        boolean standing = rows.job().plan().machine().clockedIn().stream()
                .anyMatch(device -> device.equals(DeviceName.of(setUp.holding())));
        double holding = HoldingSteps.once(setUp.holding(), standing).stream()
                .mapToDouble(this::hand)
                .sum();
        int touchOffs = room.setUp(setUp.id()).map(SetUpRoom::touchOffs).orElse(0);
        return holding
                + 2 * hand(HandStep.FIND_EDGE)
                + touchOffs * hand(HandStep.TOUCH_OFF)
                + hand(HandStep.FIRST_PART);
    }

    private List<TimePlan.OperationTime> operations(DrawnSetUp setUp) {
        List<TimePlan.OperationTime> found = new ArrayList<>();
        String holderBefore = "";
        for (DrawnOperation operation : setUp.operations()) {
            String holder = operation.holder().value();
            double change = change(operation, holder.equals(holderBefore));
            double handling = change + positioning(operation);
            found.add(new TimePlan.OperationTime(setUp.id(), operation.id(), cutting(operation), handling, change));
            holderBefore = holder;
        }
        return found;
    }

    private double change(DrawnOperation operation, boolean sameHolder) {
        Holder.Style style =
                rows.holder(operation.holder().value()).map(Holder::style).orElse(Holder.Style.COLLET_CHUCK);
        double speed = hand(rows.machine().steps().isEmpty() ? HandStep.CHANGE_VARIABLE_SPEED : HandStep.CHANGE_BELT);
        return speed
                + switch (style) {
                    case SPINDLE_COLLET, COLLET_CHUCK -> hand(HandStep.CHANGE_COLLET_TOOL);
                    case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS ->
                        sameHolder ? hand(HandStep.CHANGE_DRILL_IN_CHUCK) : hand(HandStep.CHANGE_HOLDER);
                    case SET_SCREW,
                            FACE_MILL_ARBOR,
                            SCREWED_SHANK_CHUCK,
                            SHRINK,
                            SHELL_MILL_ARBOR,
                            FLY_CUTTER_BODY,
                            BORING_HEAD,
                            STUB_ARBOR,
                            TAPER_SOCKET,
                            TAPPING_HEAD,
                            FLOATING_REAMER_HOLDER -> hand(HandStep.CHANGE_HOLDER);
                };
    }

    private double positioning(DrawnOperation operation) {
        int runs = runs(operation);
        return operation.kind().inHole()
                ? runs * (hand(HandStep.START_HOLE) + inTheHole(operation))
                : runs * hand(HandStep.START_PASS);
    }

    /** Chips cleared between pecks, and the bore measured between trial cuts. */
    private double inTheHole(DrawnOperation operation) {
        HoleWork work = cut.operation(operation.id()).map(OperationCut::hole).orElse(null);
        if (work == null) {
            return 0;
        }
        long measured = work.trials().stream().filter(TrialCut::measuredBefore).count();
        double clearing = work.clearings() == 0 ? 0 : work.clearings() * hand(HandStep.CLEAR_CHIPS);
        return clearing + (measured == 0 ? 0 : measured * hand(HandStep.MEASURE));
    }

    /** How often a cut is started: holes, or passes in depth times lanes; a face counts once. */
    private int runs(DrawnOperation operation) {
        return operation.kind() == Operation.Kind.FACE
                ? 1
                : part.operation(operation.id()).map(OperationStage::runs).orElse(0);
    }

    private double cutting(DrawnOperation operation) {
        OperationStage stage = part.operation(operation.id()).orElse(null);
        OperationCut load = cut.operation(operation.id()).orElse(null);
        if (stage == null || load == null || load.feed().inside() <= 0) {
            return 0;
        }
        double back = operation.kind() == Operation.Kind.TAP ? 2 : 1;
        int starts = Math.max(1, runs(operation));
        int passes = operation.kind() == Operation.Kind.BORE ? load.passes() : 1;
        double eased = load.hole() == null ? 0 : starts * load.hole().longerBy();
        double length = passes * back * (stage.cutLength() + starts * APPROACH) + eased;
        return new CutTime(1, 0, length, 0, load.feed().inside()).seconds();
    }

    /** Seconds of a step by the shop's row; nothing where the row is missing, which is said under not checked. */
    private double hand(HandStep step) {
        asked.add(step);
        return rows.time(step.row()).map(row -> row.time().inside()).orElse(0.0);
    }

    private List<NotChecked> missing() {
        return asked.stream()
                .filter(step -> rows.time(step.row()).isEmpty())
                .map(step -> new NotChecked("time", "", "", "the shop's row " + step.row()))
                .toList();
    }
}
