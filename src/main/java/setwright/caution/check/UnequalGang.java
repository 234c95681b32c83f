package setwright.caution.check;

import java.util.List;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Size;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.plan.part.Lying;
import setwright.quantity.Unit;

/** Several parts side by side in one vise on hard jaws, not all of one width: the widest alone is held. */
public final class UnequalGang implements Check {
    /** Hard jaws still hold parts whose widths differ by this, mm (common practice). */
    private static final double SPREAD = 0.02;

    /** So many never share a hard jaw evenly (common practice). */
    private static final int MANY = 3;

    @Override
    public String slug() {
        return "unequal-gang";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream()
                .filter(in -> in.drawn().parts().value() > 1 && !in.drawn().otherJaws())
                .filter(in -> in.drawn().between().value() != ViseHolding.Between.SOFT_STRIP)
                .map(this::look)
                .toList();
    }

    private Finding look(Clamped in) {
        Size across = Lying.of(
                        in.plan().job().plan().blank().envelope(),
                        in.setUp().up().value(),
                        in.setUp().quarterTurns())
                .across();
        double spread = across.greatestMm() - across.leastMm();
        Margin margin = Margin.of(
                slug(),
                in.place("gang", "the parts side by side"),
                "Widths of the parts apart",
                Figure.atMost(SPREAD, spread, Unit.MM));
        Words words = new Words(in.plan());
        if (margin.figure().holds()) {
            return in.drawn().parts().value() < MANY ? Finding.holds(margin) : many(in);
        }
        return Finding.fails(
                margin,
                Severity.CAUTION,
                "The " + in.drawn().parts().value() + " parts side by side in the vise " + in.at() + " may be "
                        + words.fine(spread) + " apart in width; hard jaws take up "
                        + words.fine(SPREAD)
                        + ". The narrow ones lie loose: take soft jaws or a strip of card, or machine them to one"
                        + " width first.");
    }

    /** However well they are measured. */
    private Finding many(Clamped in) {
        return Finding.fails(
                in.place("gang", "the parts side by side"),
                slug(),
                Severity.CAUTION,
                "The vise " + in.at() + " holds " + in.drawn().parts().value() + " parts side by side on hard jaws. Two"
                        + " of them bear, the others lie loose: put a soft strip between them and the moving jaw, or"
                        + " take soft jaws.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        JawChanges jaws = new JawChanges(plan, caution.setUp());
        return Stream.concat(
                        jaws.between(ViseHolding.Between.SOFT_STRIP, "Set a soft strip at the moving jaw.").stream(),
                        jaws.soft().stream())
                .toList();
    }
}
