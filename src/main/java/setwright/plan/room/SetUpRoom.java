package setwright.plan.room;

import java.util.List;
import setwright.reach.Level;

/**
 * The heights of one set-up.
 *
 * @param levels every named level from the table up to the part's top
 * @param kneeHeights the different knee heights in use (spindle nose over table, quill in), mm
 * @param touchOffs how often Z has to be touched off
 * @param movedZeros how often a tool that stays in goes on at another knee height, its zero moved by the dial
 */
public record SetUpRoom(
        String setUp,
        List<Level> levels,
        List<Double> kneeHeights,
        int touchOffs,
        int movedZeros,
        List<OperationRoom> operations) {
    public SetUpRoom {
        levels = List.copyOf(levels);
        kneeHeights = List.copyOf(kneeHeights);
        operations = List.copyOf(operations);
    }
}
