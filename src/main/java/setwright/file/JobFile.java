package setwright.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.file.json.Json;
import setwright.file.json.Json.Layout;
import setwright.file.json.Problems;
import setwright.file.json.TextFile;
import setwright.file.json.Tree;
import setwright.file.json.TreeRead;
import setwright.file.shape.Checking;
import setwright.file.shape.FormShape;
import setwright.file.shape.Shapes;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.shop.Shop;

/** Reads and writes jobs. */
public final class JobFile {
    private static final FormShape DOCUMENT = Shapes.record(JobDocument.class);
    private static final FormShape PLAN = Shapes.record(JobPlan.class);

    /** Row copies take one line each, as in the shop's own files. */
    private static final List<String> ONE_LINE_EACH = List.of("rows");

    private JobFile() {}

    public static JobRead read(Path file, Shop shop) {
        return read(TextFile.read(file), shop);
    }

    public static JobRead read(String text, Shop shop) {
        return read(Json.read(text), shop);
    }

    private static JobRead read(TreeRead read, Shop shop) {
        Problems problems = new Problems();
        problems.addAll(read.problems());
        Optional<JobDocument> document = read.tree()
                .flatMap(tree -> Envelope.JOB.open(tree, problems))
                .flatMap(tree -> document(tree, shop, problems));
        if (document.isEmpty()) {
            return new JobRead.Refused(problems.inOrder());
        }
        Job job = job(document.get());
        return new JobRead.Opened(job, RowNote.of(job.plan().rows(), shop));
    }

    private static Optional<JobDocument> document(Tree.JsonObject tree, Shop shop, Problems problems) {
        DomainRules rules = new DomainRules(shop, problems);
        DOCUMENT.check(tree, "", new Checking(problems, rules));
        rules.finish();
        return problems.none() ? Shapes.bind(DOCUMENT, tree, JobDocument.class, problems) : Optional.empty();
    }

    private static Job job(JobDocument document) {
        JobRecord record = document.record();
        return new Job(document.plan(), record == null ? JobRecord.EMPTY : record);
    }

    /**
     * The text of a job's file.
     *
     * @param drawnUp what the pencil made of the job, for whoever reads the file; null: left out
     */
    public static String text(Job job, @Nullable DrawnUp drawnUp) {
        Tree pencil = drawnUp == null ? null : Pencil.of(drawnUp);
        Envelope envelope = Envelope.JOB;
        Tree tree =
                DOCUMENT.write(new JobDocument(envelope.format(), envelope.newest(), job.plan(), pencil, job.record()));
        return Json.prettyText(tree, ONE_LINE_EACH);
    }

    /**
     * Writes a job, leaving its old file beside it as {@code NAME.backup}. Until the new file is whole on the disk the
     * old one stays where it is.
     *
     * @throws IOException with a message for the person who saves
     */
    public static void save(Path file, Job job, @Nullable DrawnUp drawnUp) throws IOException {
        new Saving(file).write(text(job, drawnUp));
    }

    /** The plan in one line, the same for equal plans: what a fingerprint is taken of. */
    public static String canonical(JobPlan plan) {
        return Json.text(PLAN.write(plan), Layout.ONE_LINE);
    }
}
