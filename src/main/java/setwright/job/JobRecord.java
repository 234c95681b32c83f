package setwright.job;

import java.util.List;

/** What happened. Lines are only ever added; a mistake is corrected by a new line. Changes here never void a sign-off. */
public record JobRecord(
        List<Tick> ticks,
        List<ReadingTaken> readings,
        List<Remark> remarks,
        List<Acceptance> acceptances,
        List<SignOff> signOffs,
        List<Used> used) {

    public static final JobRecord EMPTY =
            new JobRecord(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public JobRecord {
        ticks = List.copyOf(ticks);
        readings = List.copyOf(readings);
        remarks = List.copyOf(remarks);
        acceptances = List.copyOf(acceptances);
        signOffs = List.copyOf(signOffs);
        used = List.copyOf(used);
    }

    public JobRecord ticking(Tick tick) {
        return new JobRecord(plus(ticks, tick), readings, remarks, acceptances, signOffs, used);
    }

    public JobRecord accepting(Acceptance acceptance) {
        return new JobRecord(ticks, readings, remarks, plus(acceptances, acceptance), signOffs, used);
    }

    public JobRecord remarking(Remark remark) {
        return new JobRecord(ticks, readings, plus(remarks, remark), acceptances, signOffs, used);
    }

    public JobRecord signing(SignOff signOff) {
        return new JobRecord(ticks, readings, remarks, acceptances, plus(signOffs, signOff), used);
    }

    private static <T> List<T> plus(List<T> list, T one) {
        java.util.ArrayList<T> longer = new java.util.ArrayList<>(list);
        longer.add(one);
        return longer;
    }

    /** A step of one part done. */
    public record Tick(String step, int part, String by, String at) {}

    /** A reading taken on one part, as typed. */
    public record ReadingTaken(String thing, int part, String value, String by, String at) {}

    /** A remark pinned to a thing; an answer names the remark that it answers. */
    public record Remark(String id, String on, String answers, String text, String by, String at) {}

    /**
     * A caution accepted: it lapses when the figure gets clearly worse than {@code value}.
     *
     * @param caution slug, set-up, operation and thing, joined by slashes
     * @param value the figure when it was accepted, as text of a number
     */
    public record Acceptance(String caution, Role role, String by, String reason, String at, String value) {}

    /** A name under the plan, with the fingerprint it was signed on. */
    public record SignOff(Sign sign, String by, String at, String fingerprint) {}

    /** What was really used or set for an operation. */
    public record Used(String operation, String what, String value, String by, String at) {}

    /** Who accepts. */
    public enum Role {
        MACHINIST,
        LEAD,
        APPRENTICE
    }

    /** What is signed. */
    public enum Sign {
        PLANNED,
        CHECKED,
        RELEASED_FOR_FIRST_PART,
        RELEASED_FOR_BATCH
    }
}
