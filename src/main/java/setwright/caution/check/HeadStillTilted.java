package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.job.Edits;
import setwright.job.SetUp;
import setwright.job.Tilt;
import setwright.plan.Plan;

/** A set-up comes after one with the head swivelled, and nobody ticked that the head was trammed between them. */
public final class HeadStillTilted implements Check {
    @Override
    public String slug() {
        return "head-still-tilted";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        String swivelled = "";
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            if (byHead(setUp.tilt())) {
                swivelled = setUp.id();
            } else if (!swivelled.isEmpty()) {
                found.add(trammed(plan, setUp) ? Finding.HOLDS : failing(setUp, swivelled));
                swivelled = "";
            }
        }
        return found;
    }

    private static boolean byHead(@org.jspecify.annotations.Nullable Tilt tilt) {
        return tilt != null && tilt.by() == Tilt.By.HEAD;
    }

    private static boolean trammed(Plan plan, DrawnSetUp setUp) {
        return plan.job().record().ticks().stream().anyMatch(tick -> tick.step().equals(setUp.id() + "/tram"));
    }

    private Finding failing(DrawnSetUp setUp, String swivelled) {
        return Finding.fails(
                Caution.Place.ofSetUp(setUp.id(), "head", "the head"),
                slug(),
                Severity.CAUTION,
                "The head is left swivelled by set-up " + swivelled + " and wanted square " + Words.at(setUp.id())
                        + ". Every face and bore comes out leaning: take the tram step and tick it, or take the"
                        + " swivelled set-up last.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<SetUp> square = new ArrayList<>(Edits.written(plan.drawnUp()));
        List<SetUp> swivelled =
                square.stream().filter(one -> byHead(one.tilt())).toList();
        square.removeAll(swivelled);
        square.addAll(swivelled);
        return List.of(new Proposal(
                Proposal.Way.ORDER,
                "Take the set-up with the head swivelled last.",
                plan.job().withPlan(plan.job().plan().withSetUps(square))));
    }
}
