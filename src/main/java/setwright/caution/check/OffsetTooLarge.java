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
import setwright.shop.HeadDial;

/** A bore that is wider than the slide of the boring head reaches with this bar. */
public final class OffsetTooLarge implements Check {
    @Override
    public String slug() {
        return "offset-too-large";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Bored.all(plan).map(this::look).toList();
    }

    private Finding look(Bored bored) {
        Operations.In in = bored.in();
        HeadDial head = bored.head();
        if (head == null) {
            return in.unlooked(slug(), "how far the slide of its boring head goes, in the head's row");
        }
        Margin margin = Margin.of(
                slug(),
                in.place("slide"),
                "Slide of the head for " + in.cutter(),
                Figure.atMost(head.travel().inside(), bored.offset(), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, bored, margin.figure()));
    }

    private static String message(Operations.In in, Bored bored, Figure figure) {
        Words words = new Words(in.plan());
        return words.holder(in.operation()) + " has to bring " + in.cutter() + " " + words.length(figure.value())
                + " out of the middle for a bore of " + words.length(bored.size()) + " " + in.at()
                + "; its slide goes " + words.length(figure.limit())
                + ". The gib has nothing left to hold: take a larger bar, or set the bar across in the head.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return Bored.otherBars(plan, caution);
    }
}
