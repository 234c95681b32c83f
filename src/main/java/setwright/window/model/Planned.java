package setwright.window.model;

import java.util.Optional;
import setwright.caution.Findings;
import setwright.file.JobFile;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.SetUp;
import setwright.job.ViseField;
import setwright.plan.Plan;
import setwright.plan.Rows;
import setwright.plan.pencil.Pencil;
import setwright.quantity.Printing;
import setwright.quantity.Reading;
import setwright.review.Fingerprint;
import setwright.review.RowsInUse;
import setwright.window.state.Evaluated;

/**
 * What every model is made of: the job as it is now, and what was worked out of it last. While somebody types the job may
 * be ahead of the plan; what is inked is read from the job, all else from the plan.
 */
public record Planned(Job job, Evaluated evaluated) {
    public Plan plan() {
        return evaluated.plan();
    }

    public Findings findings() {
        return evaluated.findings();
    }

    /** Whether the plan is of this very job. */
    public boolean upToDate() {
        return plan().job().equals(job);
    }

    /** The job as it is now, drawn up; what edits start from. Where it cannot be, with what was drawn up last. */
    public DrawnUp drawnUp() {
        if (upToDate()) {
            return plan().drawnUp();
        }
        try {
            return Pencil.drawUp(job, Rows.of(job, plan().rows().shop()));
        } catch (IllegalStateException missingRow) {
            return new DrawnUp(job, plan().drawnUp().setUps());
        }
    }

    /** What a name would be put under now. */
    public Fingerprint fingerprint() {
        return Fingerprint.of(plan(), JobFile.canonical(job.plan()));
    }

    /** The job with copies of the shop rows that the plan uses, so that it opens whole elsewhere. */
    public Job whole() {
        return job.withPlan(job.plan().withRows(RowsInUse.of(plan())));
    }

    public Printing printing() {
        return new Printing(job.plan().units());
    }

    public Reading reading() {
        return new Reading(job.plan().units());
    }

    OperationWords words() {
        return new OperationWords(job, plan().rows());
    }

    public Optional<DrawnSetUp> setUp(String id) {
        return plan().drawnUp().setUp(id);
    }

    public Optional<DrawnOperation> operation(String id) {
        return plan().drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operation(id).stream())
                .findFirst();
    }

    /** An operation in a few words, for instance {@code Drill 6.8 mm}; its id where the plan has none such. */
    public String brief(String operation) {
        return operation(operation).map(words()::brief).orElse(operation);
    }

    <T> Drawn<T> value(DrawnOperation drawn, OperationField<T> field) {
        Drawn<T> last = field.drawn().apply(drawn);
        Optional<Operation> ink = job.plan().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .filter(operation -> operation.id().equals(drawn.id()))
                .findFirst();
        return ink.map(operation -> Drawn.of(field.ink().apply(operation), last::value))
                .orElse(last);
    }

    <T> Drawn<T> value(DrawnSetUp drawn, ViseField<T> field) {
        return HoldingValue.vise(field).now(this, drawn);
    }

    /** A set-up as the job has it now; empty where only the pencil has it. */
    Optional<SetUp> written(String setUp) {
        return job.plan().setUps().stream()
                .filter(one -> one.id().equals(setUp))
                .findFirst();
    }
}
