package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.caution.Severity;
import setwright.job.Edits;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.plan.Plan;
import setwright.quantity.Mass;
import setwright.quantity.Typed;
import setwright.quantity.Unit;

/** What has to be lifted for this job is more than one person lifts; the part is weighed as it is first put in. */
public final class Overweight implements Check {
    /** At arm's length over the table, kg (common practice). */
    static final double AT_ARMS_LENGTH = 10;

    /** Close to the body by one person, kg (common practice). */
    static final double ONE_PERSON = 20;

    @Override
    public String slug() {
        return "overweight";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        List<String> there = new ArrayList<>(plan.job().plan().machine().clockedIn());
        for (OnTheTable in : OnTheTable.all(plan)) {
            if (found.isEmpty()) {
                found.add(lift(in, "part", "part", Figure.atMost(AT_ARMS_LENGTH, in.part(), Unit.KG)));
            }
            for (OnTheTable.Device device : in.devices()) {
                if (!there.contains(device.id())) {
                    there.add(device.id());
                    found.add(lift(in, device.id(), device.name(), Figure.atMost(ONE_PERSON, device.mass(), Unit.KG)));
                }
            }
            carried(in).ifPresent(found::add);
        }
        return found;
    }

    private Finding lift(OnTheTable in, String subject, String text, Figure mass) {
        Margin margin = Margin.of(
                slug(),
                Caution.Place.ofSetUp(in.setUp().id(), subject, text),
                "Mass of the " + text + " to lift",
                mass);
        return mass.holds() ? Finding.holds(margin) : Finding.fails(margin, Severity.CAUTION, lifting(in, text, mass));
    }

    private static String lifting(OnTheTable in, String text, Figure mass) {
        Words words = new Words(in.plan());
        String how = mass.limit() == AT_ARMS_LENGTH ? " at arm's length" : " for one person";
        return "The " + text + " to lift onto the table is " + words.mass(mass.value()) + " " + in.at() + "; "
                + words.mass(mass.limit()) + " is the most" + how + ": take a second pair of hands or a hoist.";
    }

    /** Against what the table carries, where the machine's row says that. */
    private Optional<Finding> carried(OnTheTable in) {
        Typed<Mass> most = in.plan().rows().machine().tableLoad();
        if (most == null) {
            return Optional.empty();
        }
        double all = in.part()
                + in.devices().stream().mapToDouble(OnTheTable.Device::mass).sum();
        Figure mass = Figure.atMost(most.inside(), all, Unit.KG);
        Margin margin = Margin.of(
                slug(), Caution.Place.ofSetUp(in.setUp().id(), "table", "table"), "Mass that the table carries", mass);
        return Optional.of(
                mass.holds() ? Finding.holds(margin) : Finding.fails(margin, Severity.CAUTION, carrying(in, mass)));
    }

    private static String carrying(OnTheTable in, Figure mass) {
        Words words = new Words(in.plan());
        return "The part and what holds it are " + words.mass(mass.value()) + " on the table " + in.at()
                + "; it carries " + words.mass(mass.limit())
                + " and winds hard and wears beyond that: take a lighter device or a larger machine.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        if (!new PackingChanges(plan, caution.setUp()).inVise()) {
            return List.of();
        }
        return plan.job().plan().machine().clockedIn().stream()
                .flatMap(id -> plan.rows().vise(id).stream())
                .filter(vise -> plan.rows().vise(caution.subject()).isPresent())
                .map(vise -> new Proposal(
                        Way.DEVICE,
                        "Take the " + vise.name() + ", which is bolted on already.",
                        Edits.set(plan.drawnUp(), caution.setUp(), ViseField.VISE, Plannable.inked(vise.id()))))
                .toList();
    }
}
