package setwright.window.desk;

import java.util.List;
import java.util.Map;
import setwright.job.Block;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.JobRecord;
import setwright.job.Size;
import setwright.job.Title;
import setwright.quantity.Reading;
import setwright.quantity.UnitSystem;
import setwright.window.state.Document;

/** Untitled jobs to begin with: a bare block, or an old job once more. */
final class Fresh {
    private Fresh() {}

    /** A bare block of a usual size, on the machine as it stands, of the material and in the units of the last job. */
    static Document document(JobPlan last) {
        boolean metric = last.units() == UnitSystem.METRIC;
        Block block = metric ? block("80 mm", "50 mm", "20 mm") : block("3 in", "2 in", "3/4 in");
        JobPlan plan = new JobPlan(
                new Title("New part", "", ""),
                last.units(),
                1,
                last.material(),
                block,
                last.machine(),
                List.of(),
                List.of(),
                List.of());
        return Document.untitled("new job", new Job(plan, JobRecord.EMPTY));
    }

    /** The same part again: all that was planned, nothing that happened. */
    static Document again(Document old) {
        return Document.untitled("same again", new Job(old.job().plan(), JobRecord.EMPTY));
    }

    private static Block block(String length, String depth, String height) {
        return new Block(size(length), size(depth), size(height), Map.of());
    }

    private static Size size(String text) {
        return Size.of(new Reading(UnitSystem.METRIC).length(text));
    }
}
