package setwright.job;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Time;
import setwright.quantity.Typed;

/**
 * One piece of cutting in a set-up.
 *
 * @param features ids of the features that it makes
 * @param cutter id of the cutter's row
 * @param holder id of the holder's row
 * @param stickOut holder nose to tool tip
 * @param depth axial depth of one milling pass; in a hole the depth of full diameter (full thread) below the surface
 * @param width radial width of one milling pass
 * @param finish stock that the roughing leaves on the surface for the last pass, measured square to it
 * @param lastPass whether a last pass takes it, and whether one without infeed follows
 * @param toolLife how long the edge is asked to last; the cutting speed follows from it
 * @param direction climb or conventional
 * @param coolant what is put on the cut
 * @param method how it is fed or turned where there are several ways
 * @param speed of the spindle
 * @param feed of table or quill; for a hand feed what to aim at
 * @param kneeHeight spindle nose over the table with the quill in
 * @param reason why speed or feed were set by hand; empty where they were not
 */
public record Operation(
        String id,
        Kind kind,
        List<String> features,
        Plannable<String> cutter,
        Plannable<String> holder,
        Plannable<Typed<Length>> stickOut,
        Plannable<Typed<Length>> depth,
        Plannable<Typed<Length>> width,
        Plannable<Typed<Length>> finish,
        Plannable<LastPass> lastPass,
        Plannable<Typed<Time>> toolLife,
        Plannable<Direction> direction,
        Plannable<Coolant> coolant,
        Plannable<Method> method,
        Plannable<Typed<SpindleSpeed>> speed,
        Plannable<Typed<Speed>> feed,
        Plannable<Typed<Length>> kneeHeight,
        String reason) {

    public Operation {
        features = List.copyOf(features);
    }

    /** An operation of which only kind and features are decided. */
    public static Operation pencilled(String id, Kind kind, List<String> features) {
        return new Operation(
                id,
                kind,
                features,
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                "");
    }

    /** The same under another id. */
    Operation withId(String other) {
        return new Operation(
                other,
                kind,
                features,
                cutter,
                holder,
                stickOut,
                depth,
                width,
                finish,
                lastPass,
                toolLife,
                direction,
                coolant,
                method,
                speed,
                feed,
                kneeHeight,
                reason);
    }

    /** The kinds of operation, in the order in which a side is usually worked. */
    public enum Kind {
        FACE("Face", false),
        STEP("Mill the step", false),
        PROFILE("Mill round", false),
        POCKET("Mill the pocket", false),
        SLOT("Mill the slot", false),
        KEYSEAT("Mill the keyseat", false),
        T_SLOT("Undercut the T-slot", false),
        DOVETAIL("Mill the dovetail", false),
        WOODRUFF("Sink the Woodruff seat", false),
        SAW("Saw", false),
        SPOT("Spot", true),
        DRILL("Drill", true),
        BORE("Bore", true),
        REAM("Ream", true),
        COUNTERBORE("Counterbore", true),
        SPOTFACE("Spotface", true),
        COUNTERSINK("Countersink", true),
        TAP("Tap", true),
        CHAMFER("Chamfer", false),
        FORM("Form", false),
        SCRIBE("Scribe", false);

        private final String verb;
        private final boolean inHole;

        Kind(String verb, boolean inHole) {
            this.verb = verb;
            this.inHole = inHole;
        }

        /** What is done, at the start of a sentence: {@code Counterbore}. */
        public String verb() {
            return verb;
        }

        /** Whether the tool goes down the axis of a hole; else the work is wound past the cutter. */
        public boolean inHole() {
            return inHole;
        }
    }

    /** How a surface gets its size after the roughing. */
    public enum LastPass {
        /** The roughing leaves the surface as it stays. */
        NONE,
        /** One pass takes what was left for it. */
        ONE,
        /** And another goes over it without infeed. */
        WITH_SPRING_PASS
    }

    /** Which way the edge meets the work. */
    public enum Direction {
        CLIMB,
        CONVENTIONAL
    }

    /** What is put on the cut. */
    public enum Coolant {
        DRY,
        BRUSHED_OIL,
        FLOOD,
        MIST
    }

    /** How the tool is fed or turned. */
    public enum Method {
        TABLE_FEED,
        /** Table feed, and into the work on a slope along the cut. */
        WOUND_DOWN,
        QUILL_LEVER,
        QUILL_POWER,
        /** By the lever as far as the quill goes; quill back, knee up, and on. */
        QUILL_IN_BITES,
        TAP_BY_HAND_GUIDED,
        TAP_UNDER_POWER,
        TAP_WITH_HEAD,
        TAP_ON_BENCH;

        /** Whether hands turn the tool and the spindle stands. */
        public boolean byHand() {
            return this == TAP_BY_HAND_GUIDED || this == TAP_ON_BENCH;
        }

        /** Whether a hand on the lever feeds the quill and feels what the drill does. */
        public boolean byLever() {
            return this == QUILL_LEVER || this == QUILL_IN_BITES;
        }
    }
}
