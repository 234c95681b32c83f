package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
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
import setwright.quantity.Unit;

/** What has to be lifted for this job is more than one person lifts. */
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
        for (Clamped in : Clamped.all(plan)) {
            found.add(look(in, "part", "part", Figure.atMost(AT_ARMS_LENGTH, part(in), Unit.KG)));
            if (!there.contains(in.vise().id())) {
                there.add(in.vise().id());
                double mass = in.vise().mass().inside();
                found.add(look(in, in.vise().id(), in.vise().name(), Figure.atMost(ONE_PERSON, mass, Unit.KG)));
            }
        }
        return found;
    }

    private static double part(Clamped in) {
        return in.stage().start().bulk().volume()
                * in.plan().rows().material().density().inside();
    }

    private Finding look(Clamped in, String subject, String text, Figure mass) {
        Margin margin = Margin.of(slug(), in.place(subject, text), "Mass of the " + text + " to lift", mass);
        return mass.holds() ? Finding.holds(margin) : Finding.fails(margin, Severity.CAUTION, message(in, text, mass));
    }

    private static String message(Clamped in, String text, Figure mass) {
        Words words = new Words(in.plan());
        String how = mass.limit() == AT_ARMS_LENGTH ? " at arm's length" : " for one person";
        return "The " + text + " to lift onto the table is " + words.mass(mass.value()) + " " + in.at() + "; "
                + words.mass(mass.limit()) + " is the most" + how + ": take a second pair of hands or a hoist.";
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
