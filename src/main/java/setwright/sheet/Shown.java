package setwright.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.InWords;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** A plan and the units in which it is shown, with the words that sheet, kit and steps have in common. */
record Shown(Plan plan, Printing printing) {
    String length(double mm) {
        return printing.of(Measure.LENGTH, mm);
    }

    /** A clearance: to a tenth of a millimetre or a thousandth of an inch. */
    String clearance(double mm) {
        return printing.of(Measure.LENGTH, mm, printing.units() == UnitSystem.METRIC ? 1 : 3);
    }

    String minutes(double seconds) {
        return printing.of(Measure.TIME, seconds, 1);
    }

    String speed(double inside) {
        return printing.of(Measure.SPINDLE_SPEED, inside);
    }

    String cutter(DrawnOperation operation) {
        return plan.rows().cutter(operation.cutter().value()).map(Cutter::name).orElse("no cutter of the shop");
    }

    String holder(DrawnOperation operation) {
        return plan.rows().holder(operation.holder().value()).map(Holder::name).orElse("no holder of the shop");
    }

    /** What is done to what: {@code Drill for 4x M8 thru}. */
    String what(DrawnOperation operation) {
        String on = features(operation).stream().map(InWords::feature).collect(Collectors.joining("; "));
        return switch (operation.kind()) {
            case FACE -> "Face to " + on;
            case SPOT, DRILL, BORE, COUNTERBORE, SPOTFACE, COUNTERSINK ->
                operation.kind().verb() + " for " + on;
            case REAM, TAP, SAW, CHAMFER, FORM, SCRIBE, PROFILE ->
                operation.kind().verb() + " " + on;
            case STEP, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, WOODRUFF ->
                operation.kind().verb() + ", " + on;
        };
    }

    private List<Feature> features(DrawnOperation operation) {
        return plan.job().plan().features().stream()
                .filter(feature -> operation.features().contains(feature.id()))
                .toList();
    }

    /** A name of the program's in words: {@code between edges}. */
    static String word(Enum<?> name) {
        return InWords.word(name);
    }

    /** The feed as hand or machine gives it. */
    String feed(DrawnOperation operation) {
        if (operation.kind() == Operation.Kind.SCRIBE) {
            return "spindle locked, each line drawn by hand";
        }
        Optional<OperationCut> cut = plan.cut().operation(operation.id());
        if (cut.isEmpty()) {
            return "feed not worked out";
        }
        String perTurn =
                printing.of(Measure.FEED_PER_REV, cut.get().feedPerEdge().inside());
        return switch (operation.method().value()) {
            case TABLE_FEED, WOUND_DOWN -> tableFeed(cut.get());
            case QUILL_LEVER -> "by the quill lever, aim at " + perTurn;
            case QUILL_IN_BITES -> "by the quill lever, aim at " + perTurn + bites(operation);
            case QUILL_POWER -> perTurn + " by the quill's power feed";
            case TAP_BY_HAND_GUIDED -> "turned by hand, guided from the spindle";
            case TAP_UNDER_POWER -> "under power, the quill follows the thread";
            case TAP_WITH_HEAD -> "with the tapping head, which reverses by itself";
            case TAP_ON_BENCH -> "finished by hand on the bench";
        };
    }

    private String bites(DrawnOperation operation) {
        return plan.room()
                .operation(operation.id())
                .map(OperationRoom::kneeUp)
                .filter(up -> up > 0)
                .map(up -> "; quill back, knee up " + length(up) + ", lock, and on")
                .orElse("");
    }

    private String tableFeed(OperationCut cut) {
        String feed = printing.of(Measure.FEED, cut.feed().inside());
        return cut.secondsPerTurn() == null
                ? feed + " by power feed"
                : feed + " by hand, "
                        + printing.of(Measure.SECONDS, cut.secondsPerTurn().inside(), 1) + " a turn of the handle";
    }
}
