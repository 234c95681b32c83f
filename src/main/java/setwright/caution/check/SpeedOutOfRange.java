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
import setwright.cutting.Selector;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/** A spindle speed well above what the edge stands, or far below what it wants. */
public final class SpeedOutOfRange implements Check {
    /** Below this share of the wanted speed it is a note (common practice). */
    private static final double SLOW = 0.4;

    @Override
    public String slug() {
        return "speed-out-of-range";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(
                plan, slug(), in -> in.operation().speed().value().inside() > 0, this::look);
    }

    private Finding look(Operations.In in, OperationCut cut) {
        double wanted = cut.wantedSpeed().inside();
        double speed = cut.speed().inside();
        double most =
                wanted * Selector.Wanted.mostOver(in.cutterRow().orElseThrow().material());
        Margin margin = Margin.of(
                slug(), in.place("spindle-speed"), "Speed of " + in.cutter(), Figure.atMost(most, speed, Unit.RPM));
        if (!margin.figure().holds()) {
            return Finding.fails(margin, Severity.CAUTION, fast(in, wanted, most));
        }
        return speed < SLOW * wanted ? Finding.fails(margin, Severity.NOTE, slow(in, wanted)) : Finding.holds(margin);
    }

    private static String fast(Operations.In in, double wanted, double most) {
        Words words = new Words(in.plan());
        return in.cutter() + " turns at " + in.operation().speed().value().text() + " " + in.at() + " and wants "
                + words.of(Measure.SPINDLE_SPEED, wanted) + ", " + words.of(Measure.SPINDLE_SPEED, most)
                + " at most. Its edge is burnt in minutes: take a slower speed.";
    }

    private static String slow(Operations.In in, double wanted) {
        Words words = new Words(in.plan());
        return in.cutter() + " turns at " + in.operation().speed().value().text() + " " + in.at() + " and wants "
                + words.of(Measure.SPINDLE_SPEED, wanted)
                + ". That spares its edge and takes its time: take a faster speed where one is there.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        Figure figure = caution.figure();
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(cut.speedAndFeedToPencil());
        if (figure != null) {
            all.addAll(cut.notFasterThan(figure.limit()));
        }
        return all;
    }
}
