package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.cutting.SafeSpeed;
import setwright.plan.Plan;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** A device or a cutter that turns faster than it may. */
public final class TooFastForTool implements Check {
    @Override
    public String slug() {
        return "too-fast-for-the-tool";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.each(plan, this::look);
    }

    private Finding look(Operations.In in) {
        Optional<Cutter> cutter = in.cutterRow();
        Optional<Holder> holder = in.holderRow();
        if (cutter.isEmpty() || holder.isEmpty()) {
            return in.unlooked(slug(), Operations.FOR_TOOL);
        }
        return Stream.concat(SafeSpeed.of(cutter.get(), holder.get()).stream(), offset(in))
                .min(Comparator.comparingDouble(SafeSpeed::most))
                .map(bound -> judged(in, bound))
                .orElse(Finding.HOLDS);
    }

    private static Stream<SafeSpeed> offset(Operations.In in) {
        Holder head = in.holderRow().orElseThrow();
        return Bored.of(in).stream().flatMap(bored -> SafeSpeed.offset(head, bored.offset()).stream());
    }

    private Finding judged(Operations.In in, SafeSpeed bound) {
        Margin margin = Margin.of(
                slug(),
                in.place("spindle-speed"),
                "Speed of the " + bound.device(),
                Figure.atMost(bound.most(), in.operation().speed().value().inside(), Unit.RPM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, bound.confirmed() ? Severity.STOP : Severity.CAUTION, message(in, bound));
    }

    private static String message(Operations.In in, SafeSpeed bound) {
        Words words = new Words(in.plan());
        String whose = bound.confirmed() ? " may turn " : " usually may turn ";
        return bound.device() + " turns at " + in.operation().speed().value().text() + " " + in.at() + " and" + whose
                + words.of(Measure.SPINDLE_SPEED, bound.most())
                + " at most. What flies apart at that speed goes through a guard: take a slower speed or another holder.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        Figure figure = caution.figure();
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(cut.speedAndFeedToPencil());
        if (figure != null) {
            all.addAll(cut.notFasterThan(figure.limit()));
        }
        all.addAll(ToolChanges.of(plan, caution).otherHolders());
        return all;
    }
}
