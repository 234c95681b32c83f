package setwright.review;

import java.util.List;
import setwright.caution.Caution;

/**
 * One value that differs between two plans.
 *
 * @param where the place, for instance {@code s1/h2-drill}; empty for the job itself
 * @param what the key there, for instance {@code stickOut}; {@link #ALL} for a thing that came or went
 * @param before its text in the old plan; {@link #NOTHING} where it was not there
 * @param now its text in the new plan; {@link #NOTHING} where it is not there
 * @param effect what came of it, as far as it can be told apart
 */
public record Change(String where, String what, String before, String now, Effect effect) {
    public static final String ALL = "all of it";
    public static final String NOTHING = "none";

    Change with(Effect told) {
        return new Change(where, what, before, now, told);
    }

    /**
     * What changed where the change was made: several changes of one operation share its effect.
     *
     * @param time change of the time of a part, s
     * @param added stops and cautions that are new or worse
     * @param cleared stops and cautions that are gone or milder
     */
    public record Effect(double time, List<Caution> added, List<Caution> cleared) {
        static final Effect NONE = new Effect(0, List.of(), List.of());

        public Effect {
            added = List.copyOf(added);
            cleared = List.copyOf(cleared);
        }
    }
}
