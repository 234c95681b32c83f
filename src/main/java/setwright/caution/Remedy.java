package setwright.caution;

import java.util.List;
import setwright.job.Job;

/**
 * A change that was tried on a copy of the job and worked out.
 *
 * @param text what it does
 * @param changed the job after it
 * @param clears whether the caution is gone, or no worse than a note, after it
 * @param adds cautions that were not there before, or not as bad
 * @param takesAway other cautions that go with it
 * @param timeEach change of the time of a part, s
 */
public record Remedy(
        String text, Job changed, boolean clears, List<Caution> adds, List<Caution> takesAway, double timeEach) {
    /** One stop weighs more than all cautions that a set-up can have. */
    private static final int STOP_WEIGHS = 100;

    public Remedy {
        adds = List.copyOf(adds);
        takesAway = List.copyOf(takesAway);
    }

    /** How much it spoils elsewhere: nought for nothing but notes; a stop weighs more than any number of cautions. */
    public long harm() {
        return adds.stream()
                .mapToLong(caution -> switch (caution.severity()) {
                    case STOP -> STOP_WEIGHS;
                    case CAUTION -> 1;
                    case NOTE -> 0;
                })
                .sum();
    }
}
