package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnSetUp;
import setwright.job.Title;
import setwright.plan.Plan;
import setwright.quantity.Printing;

/**
 * The set-up sheet: all that the machine needs to be set up by, one set-up after the other.
 *
 * @param foot stands on every page
 */
public record SetUpSheet(String title, List<Block> blocks, String foot) {
    public SetUpSheet {
        blocks = List.copyOf(blocks);
    }

    /** The sheet of the whole job. */
    public static SetUpSheet of(Plan plan, Findings findings, Printing printing) {
        return of(plan, plan.drawnUp().setUps(), findings, printing);
    }

    /** The sheet of one set-up. */
    public static SetUpSheet ofSetUp(Plan plan, String setUp, Findings findings, Printing printing) {
        return of(plan, plan.drawnUp().setUp(setUp).stream().toList(), findings, printing);
    }

    private static SetUpSheet of(Plan plan, List<DrawnSetUp> setUps, Findings findings, Printing printing) {
        Shown shown = new Shown(plan, printing);
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(new TitleBlocks(shown).blocks());
        blocks.addAll(KitBlocks.of(Kit.of(plan)));
        for (DrawnSetUp setUp : setUps) {
            blocks.addAll(new SetUpBlocks(shown, setUp).blocks());
        }
        blocks.addAll(FindingsBlocks.of(findings));
        Title title = plan.job().plan().title();
        return new SetUpSheet(
                "Set-up sheet: " + title.part() + ", drawing " + title.drawing() + " revision " + title.revision(),
                blocks,
                "Fingerprint " + findings.fingerprint());
    }
}
