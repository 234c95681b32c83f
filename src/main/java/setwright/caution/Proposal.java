package setwright.caution;

import setwright.job.Job;

/**
 * A change that might mend a caution, not tried yet.
 *
 * @param way what it works on: of several ways each is tried once before any is tried again
 * @param text what it does, in words
 * @param changed the job after it
 */
public record Proposal(Way way, String text, Job changed) {
    /** What a change works on. */
    public enum Way {
        PACKING_PLACE(true),
        PACKING_THICKNESS(false),
        PACKING_HEIGHT(true),
        GRIP(true),
        STICK_OUT(true),
        HOLDER(false),
        CUTTER(false),
        DEPTH(true),
        KNEE(true),
        PART_PLACE(true),
        ORDER(true),
        DEVICE(false),
        SEAT(true),
        SPEED(true),
        FEED(true),
        METHOD(true),
        DIRECTION(true);

        private final boolean oneWillDo;

        Way(boolean oneWillDo) {
            this.oneWillDo = oneWillDo;
        }

        /** Whether a second change of this way is only more of the first; else it is a choice of its own. */
        public boolean oneWillDo() {
            return oneWillDo;
        }
    }
}
