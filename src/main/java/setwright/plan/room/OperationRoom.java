package setwright.plan.room;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Nearest;
import setwright.quantity.Value;

/**
 * The room of one operation, mm.
 *
 * @param nearest the nearest body to any part of the tool along the path; null: nothing within 200 mm
 * @param touches every body and tool section that come nearer than 200 mm, nearest first, one line a pair
 * @param kneeHeight spindle nose over table with the quill in
 * @param kneeLow lowest knee height (nose over table) that serves
 * @param kneeHigh highest that serves; below {@code kneeLow} where none does
 * @param noseLowest spindle nose over table at the deepest point
 * @param quillUsed how far the quill goes out; worked
 * @param quillStroke what the machine has
 * @param packing what the tool meets or passes under the part when it breaks through; empty for blind work
 * @param change room to change the tool
 */
public record OperationRoom(
        String operation,
        @Nullable Nearest nearest,
        List<Nearest> touches,
        double kneeHeight,
        double kneeLow,
        double kneeHigh,
        double noseLowest,
        Value quillUsed,
        double quillStroke,
        List<UnderPart> packing,
        ChangeRoom change) {
    public OperationRoom {
        touches = List.copyOf(touches);
        packing = List.copyOf(packing);
    }

    /**
     * A body below the part against a tool that breaks through.
     *
     * @param body its name
     * @param spot index of the hole, from 0
     * @param below how far the tool goes below the underside, with over-run
     * @param clearance least distance to the body, negative: how deep it goes in
     */
    public record UnderPart(String body, int spot, double below, double clearance) {}

    /**
     * Room to get the tool in and out.
     *
     * @param where the cheapest change place that works, in words; empty where none does
     * @param room free height below the tool point there, mm; the best there is where none works
     * @param needed what the holder and its taper need, mm
     */
    public record ChangeRoom(String where, double room, double needed) {
        public boolean works() {
            return !where.isEmpty();
        }
    }
}
