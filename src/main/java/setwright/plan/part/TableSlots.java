package setwright.plan.part;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import setwright.holding.RoundForms;
import setwright.shop.MachineTable;

/** The T-slots of a machine's table, along X, and a round part that lies in one. */
public final class TableSlots {
    /** A round part wider than this many slots sits on edges too close together to be centred (common practice). */
    private static final double WIDEST = 4;

    /** One barely wider than the slot sinks too deep (common practice). */
    private static final double NARROWEST = 1.1;

    private TableSlots() {}

    /** Y of every slot, from the front. */
    public static List<Double> all(MachineTable table) {
        double pitch = table.slotPitch().inside();
        double first = -(table.slots() - 1) * pitch / 2;
        return IntStream.range(0, table.slots())
                .mapToObj(slot -> first + slot * pitch)
                .toList();
    }

    /** Y of the slot nearest to a place; the place where the table has none. */
    public static double nearest(double y, MachineTable table) {
        return all(table).stream()
                .min(Comparator.comparingDouble(slot -> Math.abs(slot - y)))
                .orElse(y);
    }

    /** Whether a round part of that diameter lies well on the edges of a slot. */
    public static boolean suits(double diameter, MachineTable table) {
        double width = table.slotWidth().inside();
        return table.slots() > 0 && diameter >= NARROWEST * width && diameter <= WIDEST * width;
    }

    /** Height of the bottom of a round part in a slot: below nought, as deep as it sinks. */
    static double sink(double diameter, MachineTable table) {
        double width = Math.min(table.slotWidth().inside(), diameter);
        return RoundForms.overSlot(diameter, width) - diameter / 2;
    }
}
