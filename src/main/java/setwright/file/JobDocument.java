package setwright.file;

import org.jspecify.annotations.Nullable;
import setwright.file.json.Tree;
import setwright.job.JobPlan;
import setwright.job.JobRecord;

/**
 * A job file as it stands.
 *
 * @param pencil what the pencil made of it last, for whoever reads the file; never read back
 * @param record null where nothing happened yet
 */
public record JobDocument(
        String format,
        int version,
        JobPlan plan,
        @Nullable Tree pencil,
        @Nullable JobRecord record) {}
