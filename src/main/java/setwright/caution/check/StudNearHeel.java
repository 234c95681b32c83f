package setwright.caution.check;

import java.util.List;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.holding.StrapForms;
import setwright.job.Strapping;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Unit;

/** The stud stands nearer to the heel than to the work, which then gets the lesser share of its force. */
public final class StudNearHeel implements StrapCheck {
    /** Of the stud's force on the work; with the stud in the middle it is this much. */
    private static final double ASKED = 0.5;

    @Override
    public String slug() {
        return "stud-near-heel";
    }

    @Override
    public List<Strapping.By> of() {
        return List.of(Strapping.By.STRAP);
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        double share = StrapForms.onWork(
                1,
                strap.drawn().padToStud().value().inside(),
                strap.drawn().studToHeel().value().inside());
        Margin margin = Margin.of(
                slug(),
                in.place(strap),
                "Of the stud's force the " + strap.name() + " presses on the work with",
                Figure.atLeast(ASKED, share, Unit.NONE));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        return Finding.fails(
                margin,
                Severity.CAUTION,
                "The " + strap.name() + " " + in.at() + " presses on the work with "
                        + new Words(in.plan()).printing().factor(share)
                        + " times the force of its stud; half is the least that is asked. The step block is clamped"
                        + " harder than the part: bring the stud nearer to the work.");
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return changes.studNearer();
    }
}
