package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.shop.Kept;

/** Something that the plan uses is not owned, or not as many as stand on the table at once, or nobody has counted it. */
public final class NotInShop implements Check {
    @Override
    public String slug() {
        return "not-in-shop";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        List<InUse> uncounted = new ArrayList<>();
        for (InUse used : InUse.all(plan)) {
            int owned = used.kept(plan).map(Kept::owned).orElse(0);
            if (owned == Kept.NOT_COUNTED) {
                uncounted.add(used);
            }
            boolean enough = owned == Kept.NOT_COUNTED || owned >= used.atOnce();
            found.add(enough ? Finding.HOLDS : missing(plan, used, owned));
        }
        if (!uncounted.isEmpty()) {
            found.add(notCounted(plan, uncounted));
        }
        return found;
    }

    private Finding missing(Plan plan, InUse used, int owned) {
        String name = new Words(plan).row(used.id());
        Caution.Place place = used.place(name);
        String has = owned == 0 ? "none" : String.valueOf(owned);
        String wanted = used.atOnce() == 1 ? name : used.atOnce() + " of " + name;
        return Finding.fails(
                place,
                slug(),
                Severity.CAUTION,
                "The plan uses " + wanted + " " + place.address() + " and the shop has " + has
                        + ": take another, or get it before the job comes up.");
    }

    private Finding notCounted(Plan plan, List<InUse> uncounted) {
        Words words = new Words(plan);
        Caution.Place place = Caution.Place.ofSetUp(uncounted.get(0).setUp(), "not-counted", "kit");
        String names = uncounted.stream().map(one -> words.row(one.id())).collect(Collectors.joining(", "));
        return Finding.fails(
                place,
                slug(),
                Severity.NOTE,
                "Not counted yet " + place.address() + ": " + names
                        + ". Look whether they are there, and take the count.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        if (caution.operation().isEmpty()) {
            return plan.rows().parallels(caution.subject()).isPresent() && Clamped.inVise(plan, caution.setUp())
                    ? new PackingChanges(plan, caution.setUp()).otherSets()
                    : List.of();
        }
        ToolChanges tool = ToolChanges.of(plan, caution);
        return caution.subject().equals(tool.operation().holder().value()) ? tool.otherHolders() : tool.otherCutters();
    }
}
