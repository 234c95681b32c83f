package setwright.caution.choice;

import java.util.List;
import java.util.Optional;
import setwright.caution.Judge;
import setwright.file.ShopFolder;
import setwright.file.ShopRead;
import setwright.job.Job;
import setwright.job.MachineAsItStands;
import setwright.job.Title;
import setwright.job.note.NewJob;
import setwright.job.note.NoteRead;
import setwright.job.note.TitleBlock;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** Parts as a new user types them, in the shop that comes with the program; the 6 in vise stands on the table. */
public final class Toolroom {
    public static final Shop SHOP = ((ShopRead.Opened) ShopFolder.packed()).shop();

    private Toolroom() {}

    /** A new job of a blank and drawing notes, four off. */
    public static Job job(String blank, String material, String notes) {
        TitleBlock block = new TitleBlock(
                new Title("Mount part", "TM-300", "A"),
                blank,
                material,
                4,
                UnitSystem.METRIC,
                new MachineAsItStands("knee-mill-r8-9x49", List.of("vise-6in"), null));
        NoteRead<Job> read = NewJob.of(block, notes, SHOP);
        if (read instanceof NoteRead.One<Job> one) {
            return one.value();
        }
        throw new IllegalArgumentException("The notes were not read: " + read);
    }

    /** A pier block with a set-up of twelve operations and more. */
    public static Job twelveOperations() {
        return job("100x80x40", "mild steel", """
                face to 38
                slot 12x8 deep
                pocket 20x12x6 deep at 50,18
                12 H7 thru
                4x M8 thru
                80x60
                4x cbore 11 x 6.5 on 6.6 thru
                40x60
                chamfer 1 x 45
                """);
    }

    static Plan plan(Job job) {
        return Planner.plan(job, SHOP);
    }

    static List<Ranked> holdings(Job job) {
        Plan plan = plan(job);
        return HoldingRanking.of(
                plan, Judge.judge(plan), plan.drawnUp().setUps().get(0).id(), SHOP, Trying.TO_THE_END);
    }

    static List<Ranked> holders(Job job, String operation) {
        Plan plan = plan(job);
        return HolderRanking.of(plan, Judge.judge(plan), operation, SHOP, Trying.TO_THE_END);
    }

    static Optional<Ranked> named(List<Ranked> all, String text) {
        return all.stream().filter(one -> one.text().contains(text)).findFirst();
    }
}
