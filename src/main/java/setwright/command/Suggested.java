package setwright.command;

import java.nio.file.Path;
import java.util.List;
import setwright.caution.Findings;
import setwright.caution.Judge;
import setwright.caution.choice.HolderRanking;
import setwright.caution.choice.HoldingRanking;
import setwright.caution.choice.Ranked;
import setwright.caution.choice.Trying;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/** What the shop has for one set-up of a job: its holdings, and the holders of its operations, each ranked. */
record Suggested(Plan plan, DrawnSetUp setUp, List<Ranked> holdings, List<OfOperation> holders) {
    Suggested {
        holdings = List.copyOf(holdings);
        holders = List.copyOf(holders);
    }

    /** The holders for the cutter of one operation. */
    record OfOperation(DrawnOperation operation, List<Ranked> ranked) {
        OfOperation {
            ranked = List.copyOf(ranked);
        }
    }

    /** A job that was read and worked out; it complains where it cannot be. */
    record Read(Plan plan, Findings findings, Shop shop) {
        static Read of(String name, Shared shared, Terminal terminal) {
            Path file = terminal.folder().resolve(name);
            Shop shop = new ShopShelf(shared.shop(), terminal.folder()).shop(file);
            JobRead read = JobFile.read(file, shop);
            if (!(read instanceof JobRead.Opened opened)) {
                throw new Complaint(
                        CheckCommand.complaint(new JobCheck.Unreadable(name, ((JobRead.Refused) read).problems())));
            }
            try {
                Plan plan = Planner.plan(opened.job(), shop);
                return new Read(plan, Judge.judge(plan), shop);
            } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyond) {
                throw new Complaint(name + " was read, but cannot be worked out: " + beyond.getMessage());
            }
        }

        List<Ranked> holdings(DrawnSetUp setUp) {
            return HoldingRanking.of(plan, findings, setUp.id(), shop, Trying.TO_THE_END);
        }

        List<Ranked> holders(DrawnOperation operation) {
            return HolderRanking.of(plan, findings, operation.id(), shop, Trying.TO_THE_END);
        }

        Suggested suggested(DrawnSetUp setUp) {
            return new Suggested(
                    plan,
                    setUp,
                    holdings(setUp),
                    setUp.operations().stream()
                            .map(operation -> new OfOperation(operation, holders(operation)))
                            .filter(of -> !of.ranked().isEmpty())
                            .toList());
        }
    }
}
