package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.quantity.Unit;

/** The cut pushes the part off the solid jaw: the moving jaw gives before the solid one does. */
public final class ForceOffSolidJaw implements Check {
    /** What the mean force off the solid jaw may be of the grip (common practice). */
    static final double SHARE = 1.0 / 3;

    @Override
    public String slug() {
        return "force-off-solid-jaw";
    }

    private record Push(Operations.In in, double newtons) {}

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream()
                .flatMap(in -> in
                        .operations()
                        .flatMap(operation -> push(operation).stream())
                        .max(Comparator.comparingDouble(Push::newtons))
                        .map(worst -> judged(in, worst))
                        .stream())
                .toList();
    }

    /** Faced to and fro, so that the force across acts either way. */
    private static Optional<Push> push(Operations.In in) {
        return in.plan()
                .cut()
                .operation(in.operation().id())
                .flatMap(cut -> Optional.ofNullable(cut.milling())
                        .map(load -> new Push(in, Math.abs(load.mean().cross()))));
    }

    private Finding judged(Clamped in, Push worst) {
        String cutter = new Words(in.plan()).cutter(worst.in().operation());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(in.setUp().id(), worst.in().operation().id(), "solid-jaw", "solid jaw"),
                "Mean force of " + cutter + " off the solid jaw",
                Figure.atMost(SHARE * in.grip(), worst.newtons(), Unit.KN));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, worst, cutter));
    }

    private static String message(Clamped in, Push worst, String cutter) {
        Words words = new Words(in.plan());
        return cutter + " pushes the part off the solid jaw with " + words.force(worst.newtons()) + " in the mean "
                + worst.in().at() + "; " + words.force(SHARE * in.grip())
                + " is asked, a third of the grip. The moving jaw lifts and gives: grip harder, or take less.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(new GripChanges(plan, caution.setUp()).harder());
        all.addAll(CutChanges.of(plan, caution).shallower());
        return all;
    }
}
