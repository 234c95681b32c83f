package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.quantity.Unit;

/** The part sits wholly to one side of the vise's screw: the moving jaw swings and grips it by one end. */
public final class OneEndOfJaws implements Check {
    @Override
    public String slug() {
        return "one-end-of-jaws";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream().map(this::look).toList();
    }

    private Finding look(Clamped in) {
        double half = in.vise().jawWidth().inside() / 2;
        double left = Math.max(in.heights().left(), -half);
        double row = in.drawn().parts().value() * in.heights().length();
        double right = Math.min(in.heights().left() + row, half);
        double over = Math.min(right, -left);
        Margin margin = Margin.of(
                slug(),
                in.place("offset", "part"),
                "Reach of the part over the middle of the jaws",
                Figure.atLeast(0, over, Unit.MM));
        boolean shorterThanHalf = right - left < half;
        return margin.figure().holds() || !shorterThanHalf
                ? margin.figure().holds() ? Finding.holds(margin) : Finding.HOLDS
                : Finding.fails(margin, Severity.CAUTION, message(in, over));
    }

    private static String message(Clamped in, double over) {
        Words words = new Words(in.plan());
        String side = in.heights().left() >= 0 ? "right" : "left";
        return "The part sits " + words.length(-over) + " " + side + " of the screw of the "
                + in.vise().name() + " " + in.at() + "; over the middle, at least to " + words.length(0)
                + ", is asked. The moving jaw swings and holds it by one corner: bring it to the middle, or put a piece"
                + " of the same width at the other end.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return new PlaceChanges(plan, caution.setUp()).toTheMiddle();
    }
}
