package setwright.caution.check;

import java.util.List;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Strapping;
import setwright.plan.part.StrapPlace;
import setwright.quantity.Unit;

/** The heel of a strap is lower than its pad: it pushes the part sideways and bears on its edge. */
public final class HeelLow implements StrapCheck {
    /** So far the heel may be high, or low and only a caution (common practice). */
    private static final double SLOPE = Math.toRadians(2);

    /** Read no finer than a strap is laid, mm. */
    private static final double LEVEL = 0.05;

    @Override
    public String slug() {
        return "heel-low";
    }

    @Override
    public List<Strapping.By> of() {
        return List.of(Strapping.By.STRAP);
    }

    @Override
    public Finding look(Strapped in, StrapPlace strap) {
        double over = strap.drawn().heelOver().value().inside();
        double span = strap.drawn().padToStud().value().inside()
                + strap.drawn().studToHeel().value().inside();
        double slope = StrictMath.atan2(over, span);
        Margin margin = Margin.of(
                slug(),
                in.place(strap),
                "Heel of the " + strap.name() + " over its pad",
                Figure.atLeast(0, Math.abs(over) < LEVEL ? 0 : over, Unit.MM));
        if (slope > SLOPE) {
            return Finding.fails(margin, Severity.NOTE, high(in, strap, over));
        }
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        return Finding.fails(margin, slope < -SLOPE ? Severity.STOP : Severity.CAUTION, low(in, strap, over));
    }

    private static String high(Strapped in, StrapPlace strap, double over) {
        return "The heel of the " + strap.name() + " " + in.at() + " stands " + new Words(in.plan()).length(over)
                + " over its pad, and it bears on its tip alone: take a lower step.";
    }

    private static String low(Strapped in, StrapPlace strap, double over) {
        return "The heel of the " + strap.name() + " " + in.at() + " stands "
                + new Words(in.plan()).length(-over)
                + " lower than its pad; level or slightly high is asked. It pushes the part sideways and bears on"
                + " the part's edge: bring it up by a step.";
    }

    @Override
    public List<Proposal> proposals(StrapChanges changes) {
        return changes.level();
    }
}
