package setwright.plan.room;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Nearest;
import setwright.quantity.Value;
import setwright.reach.ToolChange;

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
 * @param kneeUp how far the knee comes up between two bites of a drill; nought where the quill does it in one
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
        double kneeUp,
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
     * Room to get the tool before this operation out, and its own in.
     *
     * @param where the cheapest change place that works, in words; empty where none does
     * @param room free height below the tool point there, mm; the best there is where none works
     * @param needed what the holder and its taper need, mm
     * @param lost what the way there and back may lose of place and depth
     * @param operation whose tool takes the room: this one, or the one before where that stands out further
     */
    public record ChangeRoom(String where, double room, double needed, ToolChange.Lost lost, String operation) {
        /** The tool of the operation before stays in. */
        static final ChangeRoom STAYS = new ChangeRoom("the tool stays in", 0, 0, ToolChange.Lost.NOTHING, "");

        public boolean stays() {
            return operation.isEmpty();
        }

        public boolean works() {
            return !where.isEmpty();
        }
    }
}
