package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.part.Lying;
import setwright.quantity.Unit;

/** Several parts side by side in one vise on hard jaws, not all of one width: the widest alone is held. */
public final class UnequalGang implements Check {
    /** Hard jaws still hold parts whose widths differ by this, mm (common practice). */
    private static final double SPREAD = 0.02;

    @Override
    public String slug() {
        return "unequal-gang";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream()
                .filter(in -> in.drawn().parts().value() > 1 && in.drawn().jaws() == null)
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
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        Words words = new Words(in.plan());
        return Finding.fails(
                margin,
                Severity.CAUTION,
                "The " + in.drawn().parts().value() + " parts side by side in the vise " + in.at() + " may be "
                        + words.fine(spread) + " apart in width; hard jaws take up "
                        + words.fine(SPREAD)
                        + ". The narrow ones lie loose: take soft jaws or a strip of card, or machine them to one"
                        + " width first.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return new JawChanges(plan, caution.setUp()).soft();
    }
}
