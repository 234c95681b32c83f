package setwright.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Power;
import setwright.quantity.Ratio;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;

/**
 * A vertical milling machine.
 *
 * @param steps the speeds of a step pulley or gear head, lowest first; empty where the drive is variable
 * @param speedLeast slowest speed of a variable drive; null for steps
 * @param speedGreatest fastest speed of a variable drive; null for steps
 * @param power of the motor
 * @param efficiency from motor to cutter
 * @param noseLow spindle nose over the table, knee up, quill in
 * @param noseHigh spindle nose over the table, knee down, quill in
 * @param quillStroke how far the quill goes down
 * @param quillFeeds power feeds of the quill per turn; empty where there are none
 * @param quillFeedLargestDrill largest drill that the power quill feed may carry; null where there is none
 * @param throat spindle axis to column
 * @param spring machine and taper together, at the spindle nose, side load
 * @param ranges of gears or belts with the way each turns; null where nothing is known
 * @param quillRuler one division of the ruler on the quill; null where there is none
 * @param kneeRuler one division of a ruler on the knee; null where there is none
 * @param tableLoad most that the table may carry; null where nobody knows
 * @param column what carries the head where the head goes up and down; null where the table does, on a knee
 */
public record Machine(
        String id,
        String name,
        Taper taper,
        List<Typed<SpindleSpeed>> steps,
        @Nullable Typed<SpindleSpeed> speedLeast,
        @Nullable Typed<SpindleSpeed> speedGreatest,
        Typed<Power> power,
        Typed<Ratio> efficiency,
        Typed<Length> noseLow,
        Typed<Length> noseHigh,
        Typed<Length> noseDiameter,
        Typed<Length> quillStroke,
        Typed<Length> quillDiameter,
        List<Typed<Length>> quillFeeds,
        @Nullable Typed<Length> quillFeedLargestDrill,
        Axis x,
        Axis y,
        Axis knee,
        MachineTable table,
        Typed<Length> throat,
        StiffnessBand spring,
        @Nullable List<GearRange> ranges,
        @Nullable Typed<Length> quillRuler,
        @Nullable Typed<Length> kneeRuler,
        @Nullable Typed<Mass> tableLoad,
        @Nullable Column column,
        Kept kept,
        String source)
        implements Owned {

    public Machine {
        steps = List.copyOf(steps);
        quillFeeds = List.copyOf(quillFeeds);
        ranges = ranges == null ? null : List.copyOf(ranges);
    }

    /** What a head goes up and down on. */
    public enum Column {
        /** The head turns about it with every change of height. */
        ROUND,
        DOVETAIL
    }

    /** Whether a change of height turns the head, so that X and Y are lost. */
    public boolean losesPlace() {
        return column == Column.ROUND;
    }

    @Override
    public Kind kind() {
        return Kind.MACHINE;
    }

    /** The slowest speed of the spindle, rad/s. */
    public double slowest() {
        return speedLeast != null ? speedLeast.inside() : steps.get(0).inside();
    }

    /** The fastest speed of the spindle, rad/s. */
    public double fastest() {
        return speedGreatest != null
                ? speedGreatest.inside()
                : steps.get(steps.size() - 1).inside();
    }
}
