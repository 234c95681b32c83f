package setwright.caution.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.Drawn;
import setwright.job.Edits;
import setwright.job.InWords;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.job.ViseHolding.GripAsked;
import setwright.plan.Plan;

/** A vise closed harder, up to hard and no further. */
record GripChanges(Plan plan, String setUp) {
    List<Proposal> harder() {
        return others(true);
    }

    /** Less hard, hardest first. */
    List<Proposal> softer() {
        List<Proposal> found = new ArrayList<>(others(false));
        Collections.reverse(found);
        return found;
    }

    private List<Proposal> others(boolean harder) {
        PackingChanges vise = new PackingChanges(plan, setUp);
        if (!vise.inVise()) {
            return List.of();
        }
        Drawn<GripAsked> now = vise.vise().grip();
        List<Proposal> found = new ArrayList<>();
        for (GripAsked grip : GripAsked.values()) {
            int more = grip.compareTo(now.value());
            if (harder ? more > 0 : more < 0) {
                found.add(new Proposal(
                        Way.GRIP,
                        "Close the vise " + word(grip) + " " + Words.now(now, GripChanges::word) + ".",
                        Edits.set(plan.drawnUp(), setUp, ViseField.GRIP, Plannable.inked(grip))));
            }
        }
        return found;
    }

    private static String word(GripAsked grip) {
        return InWords.word(grip);
    }
}
