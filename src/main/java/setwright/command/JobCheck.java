package setwright.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Judge;
import setwright.caution.Remedies;
import setwright.caution.Remedy;
import setwright.caution.Severity;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.file.RowNote;
import setwright.file.json.Problem;
import setwright.job.Job;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/** A job file checked: worked out and judged, or not readable. */
sealed interface JobCheck {
    /** As it was named. */
    String file();

    Exit exit();

    /**
     * The job was worked out.
     *
     * @param remedies of every open caution, by its identity; each was tried
     * @param rows what of the job's shop rows is not what the shop has
     */
    record Worked(String file, Plan plan, Findings findings, Map<String, List<Remedy>> remedies, List<RowNote> rows)
            implements JobCheck {
        @Override
        public Exit exit() {
            boolean stops = findings.any(caution -> caution.severity() == Severity.STOP);
            if (!stops) {
                return Exit.CLEAN;
            }
            return findings.open(Severity.STOP).isEmpty() ? Exit.ACCEPTED : Exit.STOPS;
        }

        List<Remedy> remedies(Caution caution) {
            return remedies.getOrDefault(caution.identity(), List.of());
        }
    }

    /** The file was left as it is. */
    record Unreadable(String file, List<Problem> problems) implements JobCheck {
        @Override
        public Exit exit() {
            return Exit.UNREADABLE;
        }
    }

    static JobCheck of(String name, Path file, Shop shop) {
        return of(name, JobFile.read(file, shop), shop);
    }

    static JobCheck of(String name, JobRead read, Shop shop) {
        return read instanceof JobRead.Opened opened
                ? worked(name, opened, shop)
                : new Unreadable(name, ((JobRead.Refused) read).problems());
    }

    /** A job that a command cannot do without; it complains where the file cannot be read. */
    static Worked required(String name, Shared shared, Terminal terminal) {
        Path file = terminal.folder().resolve(name);
        JobCheck check = of(name, file, new ShopShelf(shared.shop(), terminal.folder()).shop(file));
        if (check instanceof Worked worked) {
            return worked;
        }
        throw new Complaint(CheckCommand.complaint((Unreadable) check));
    }

    private static JobCheck judged(String name, Job job, Shop shop, List<RowNote> rows) {
        Plan plan = Planner.plan(job, shop).settled(Optional.empty());
        Findings findings = Judge.judge(plan);
        Map<String, List<Remedy>> remedies = new LinkedHashMap<>();
        for (Findings.Judged judged : findings.judged()) {
            if (judged.open()) {
                Caution caution = judged.caution();
                remedies.put(caution.identity(), Remedies.tried(plan, findings, caution, shop, () -> false));
            }
        }
        return new Worked(name, plan, findings, remedies, rows);
    }

    private static JobCheck worked(String name, JobRead.Opened opened, Shop shop) {
        try {
            return judged(name, opened.job(), shop, opened.notes());
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyond) {
            return new Unreadable(
                    name, List.of(Problem.whole("The job was read, but cannot be worked out: " + beyond.getMessage())));
        }
    }
}
