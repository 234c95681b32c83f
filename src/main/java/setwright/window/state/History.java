package setwright.window.state;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;

/**
 * Every state that a job's plan went through, with the name of the step that led to it. It only grows by new objects: a
 * history that was handed out never changes. The record is not undone; it goes along with every state.
 */
public final class History {
    private final State now;
    private final @Nullable Undone undone;
    private final JobRecord record;

    /** A state with the step that led to it; the first state has no step. */
    private record State(
            JobPlan plan,
            String step,
            String field,
            @Nullable State before) {
        State closed() {
            return field.isEmpty() ? this : new State(plan, step, "", before);
        }
    }

    private record Undone(State state, @Nullable Undone next) {}

    private History(State now, @Nullable Undone undone, JobRecord record) {
        this.now = now;
        this.undone = undone;
        this.record = record;
    }

    public static History of(Job job) {
        return new History(new State(job.plan(), "", "", null), null, job.record());
    }

    public Job job() {
        return new Job(now.plan, record);
    }

    /**
     * The job after a step. A step that changes nothing is none; one in the field of the step before takes its place, and
     * where it leads back to the state before that, both are gone.
     *
     * @param field the place that is typed in; empty for steps that never merge
     */
    public History step(String name, String field, Job changed) {
        History recorded = recorded(changed.record());
        JobPlan plan = changed.plan();
        State before = now.before;
        boolean merges = before != null && !field.isEmpty() && field.equals(now.field);
        if (merges && before != null && plan.equals(before.plan)) {
            return new History(before.closed(), null, recorded.record);
        }
        if (plan.equals(now.plan)) {
            return recorded;
        }
        return new History(new State(plan, name, field, merges ? before : now), null, recorded.record);
    }

    /** Without what is being typed in this field. */
    public History withdrawn(String field) {
        State before = now.before;
        return before != null && !field.isEmpty() && field.equals(now.field)
                ? new History(before.closed(), null, record)
                : this;
    }

    /** What was typed so far is one step; what follows in the same field is another. */
    public History closed() {
        return new History(now.closed(), undone, record);
    }

    /** The same state put otherwise, without a step; what was undone is kept. */
    public History restated(Job job) {
        return new History(new State(job.plan(), now.step, "", now.before), undone, job.record());
    }

    public History recorded(JobRecord longer) {
        return new History(now, undone, longer);
    }

    /** The name of the step that {@link #undo()} would take back. */
    public Optional<String> undoStep() {
        return now.before == null ? Optional.empty() : Optional.of(now.step);
    }

    /** The name of the step that {@link #redo()} would do again. */
    public Optional<String> redoStep() {
        return undone == null ? Optional.empty() : Optional.of(undone.state.step);
    }

    public History undo() {
        return now.before == null ? this : new History(now.before.closed(), new Undone(now.closed(), undone), record);
    }

    public History redo() {
        return undone == null ? this : new History(undone.state, undone.next, record);
    }
}
