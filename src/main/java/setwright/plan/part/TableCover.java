package setwright.plan.part;

import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.plan.Rows;
import setwright.shop.Machine;
import setwright.shop.MachineTable;

/**
 * A part that lies on the table itself: what it covers, how far it reaches beyond, what it weighs, and which machines of
 * the shop are too short for its cuts.
 *
 * @param slots of the table
 * @param hidden those that the part covers over its whole length
 * @param front how far it reaches beyond the front of the table, mm; below nought: short of it
 * @param back beyond its back
 * @param end beyond the nearer of its ends
 * @param mass of the blank, kg
 * @param travel along X that its cuts ask for, mm
 * @param tooShort names of the machines that have less
 */
public record TableCover(
        int slots,
        int hidden,
        double front,
        double back,
        double end,
        double mass,
        double travel,
        List<String> tooShort) {
    public TableCover {
        tooShort = List.copyOf(tooShort);
    }

    public static TableCover of(SetUpStage stage, Rows rows) {
        MachineTable table = rows.machine().table();
        Heights at = stage.heights();
        double half = table.width().inside() / 2;
        List<Double> lines = TableSlots.all(table);
        int hidden = (int) lines.stream()
                .filter(line -> at.front() < line && line < at.back())
                .count();
        double travel = travel(stage);
        List<String> tooShort = rows.all(Machine.class).stream()
                .filter(machine -> machine.x().travel().inside() < travel)
                .map(Machine::name)
                .toList();
        return new TableCover(
                lines.size(),
                hidden,
                -half - at.front(),
                at.back() - half,
                Math.max(at.right(), -at.left()) - table.length().inside() / 2,
                stage.start().bound() * rows.material().density().inside(),
                travel,
                tooShort);
    }

    /** From the first to the last place of the spindle over the part, wherever that lies. */
    private static double travel(SetUpStage stage) {
        PlanBox all = PlanBox.EMPTY;
        for (OperationStage operation : stage.operations()) {
            if (!operation.path().moves().isEmpty()) {
                all = all.and(operation.path().box().plan());
            }
        }
        return all.isEmpty() ? 0 : all.xHigh() - all.xLow();
    }

    /** Whether no stud finds a slot beside the part. */
    public boolean hidesAll() {
        return slots > 0 && hidden == slots;
    }

    public double overhang() {
        return Math.max(end, Math.max(front, back));
    }
}
