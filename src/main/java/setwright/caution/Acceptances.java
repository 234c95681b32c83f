package setwright.caution;

import java.util.List;
import java.util.Optional;
import setwright.job.JobRecord;
import setwright.job.JobRecord.Acceptance;

/** Whether an acceptance in the record still stands for a caution. */
public final class Acceptances {
    /** Written as the figure of a caution that has none. */
    private static final String NO_FIGURE = "";

    private Acceptances() {}

    /**
     * The latest acceptance of this caution that counts: for a stop only the lead's, and none that was made when the figure
     * was clearly better.
     */
    public static Optional<Acceptance> standing(Caution caution, JobRecord record) {
        List<Acceptance> all = record.acceptances();
        for (int i = all.size() - 1; i >= 0; i--) {
            Acceptance acceptance = all.get(i);
            boolean mine = acceptance.caution().equals(caution.identity());
            if (mine && may(acceptance.role(), caution.severity()) && !clearlyWorse(acceptance, caution)) {
                return Optional.of(acceptance);
            }
        }
        return Optional.empty();
    }

    /** Whether somebody in this role may accept a caution as bad as this: a stop is the lead's. */
    public static boolean may(JobRecord.Role role, Severity severity) {
        return severity != Severity.STOP || role == JobRecord.Role.LEAD;
    }

    private static boolean clearlyWorse(Acceptance acceptance, Caution caution) {
        Figure figure = caution.figure();
        if (figure == null) {
            return false;
        }
        try {
            return figure.clearlyWorseThan(Double.parseDouble(acceptance.value()));
        } catch (NumberFormatException unreadable) {
            return true;
        }
    }

    /** The line that accepting a caution adds to the record; a reason is asked for, the time is handed in. */
    public static Acceptance of(Caution caution, JobRecord.Role role, String by, String reason, String at) {
        if (reason.isBlank()) {
            throw new IllegalArgumentException("Accepting " + caution.slug() + " needs a reason; write down why.");
        }
        Figure figure = caution.figure();
        String value = figure == null ? NO_FIGURE : Double.toString(figure.value());
        return new Acceptance(caution.identity(), role, by, reason, at, value);
    }
}
