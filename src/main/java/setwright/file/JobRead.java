package setwright.file;

import java.util.List;
import setwright.file.json.Problem;
import setwright.job.Job;

/** What came of reading a job: the job, or every problem with its file. */
public sealed interface JobRead {
    /** The job, with a note on every row whose copy in the job is not what the shop has. */
    record Opened(Job job, List<RowNote> notes) implements JobRead {
        public Opened {
            notes = List.copyOf(notes);
        }
    }

    /** The file was left as it is. */
    record Refused(List<Problem> problems) implements JobRead {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
