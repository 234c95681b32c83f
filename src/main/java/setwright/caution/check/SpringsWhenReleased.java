package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.quantity.Unit;
import setwright.rigidity.Plank;

/**
 * A thin part bows under the squeeze, is cut flat, and springs back: gripped off its middle, or pressed on its edges until
 * it bows out.
 */
public final class SpringsWhenReleased implements Check {
    /** Of what bows it out; below it the part is stout, and that is left out. */
    private static final double FELT = 0.2;

    /** Of what bows it out; from there on the bow is past all use. */
    private static final double NEARLY = 0.95;

    /** How far out of straight thin stock is that looks straight, for each mm of it (common practice: 0.05 in 100). */
    private static final double BENT = 0.0005;

    @Override
    public String slug() {
        return "springs-when-released";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Clamped.all(plan).stream()
                .filter(in -> in.heights().gripDepth() > 0)
                .forEach(in -> in.operations()
                        .filter(one -> one.operation().kind() == Operation.Kind.FACE)
                        .forEach(one -> ToolSprings.toleranced(one).ifPresent(size -> found.add(look(in, one, size)))));
        return found;
    }

    private Finding look(Clamped in, Operations.In one, Size size) {
        double half = (size.greatestMm() - size.leastMm()) / 2;
        double bow = bow(in);
        Margin margin = Margin.of(
                slug(), in.place("bow", "part"), "Bow of the part between the jaws", Figure.atMost(half, bow, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, bow, half));
    }

    private static double bow(Clamped in) {
        Heights at = in.heights();
        double thick = at.finishedTop() - at.partBottom();
        double offMiddle = Math.abs(thick - Math.min(at.gripDepth(), thick)) / 2;
        double modulus = in.plan().rows().material().elasticModulus().inside();
        Plank plank = new Plank(at.length(), thick);
        double share = Math.min(NEARLY, in.grip() / Plank.buckling(at.depth(), modulus, plank));
        if (share < FELT) {
            return Plank.bow(in.grip() * offMiddle, at.depth(), modulus, plank);
        }
        double bent = BENT * at.depth();
        return (Plank.bow(in.grip() * offMiddle, at.depth(), modulus, plank) + bent * share) / (1 - share);
    }

    private static String message(Clamped in, double bow, double half) {
        Words words = new Words(in.plan());
        return "The squeeze bows the part " + words.fine(bow) + " " + in.at() + ", and it springs back when the vise is"
                + " opened; the drawing allows " + words.fine(half) + " either way. Grip softer, or hold it at"
                + " half its height.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(new GripChanges(plan, caution.setUp()).softer());
        all.addAll(new PackingChanges(plan, caution.setUp()).lower());
        return all;
    }
}
