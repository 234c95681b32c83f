package setwright.plan;

import java.nio.file.Path;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.file.ShopFolder;
import setwright.file.ShopRead;
import setwright.geometry.Side;
import setwright.job.Job;
import setwright.shop.Shop;

/** The demonstration jobs and the shop as they stand in the project's folders. */
public final class BearingBlock {
    private BearingBlock() {}

    public static Shop shop() {
        ShopRead read = ShopFolder.read(Path.of("shared"));
        if (read instanceof ShopRead.Opened opened) {
            return opened.shop();
        }
        throw new AssertionError("The shop does not open: " + read);
    }

    public static Job job() {
        return job(Path.of("demo-jobs/bearing-block.setwright.json"), shop());
    }

    public static Job job(Path file, Shop shop) {
        JobRead read = JobFile.read(file, shop);
        if (read instanceof JobRead.Opened opened) {
            return opened.job();
        }
        throw new AssertionError(file + " does not open: " + read);
    }

    /** The bearing block as long as only its top is worked on. */
    public static Job topAlone() {
        Job job = job();
        return job.withPlan(job.plan()
                .withFeatures(job.plan().features().stream()
                        .filter(feature -> feature.side() == Side.TOP)
                        .toList()));
    }

    public static Plan plan() {
        return Planner.plan(job(), shop());
    }
}
