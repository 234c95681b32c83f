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
import setwright.cutting.SpeedAndFeed;
import setwright.plan.Plan;
import setwright.quantity.Measure;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** A device or a cutter that turns faster than it may. */
public final class TooFastForTool implements Check {
    /** A drill chuck of 13 mm whose row says nothing, rev/min (from memory). */
    private static final double DRILL_CHUCK = 3000;

    /** Rim of a face mill that has no limit marked on it, m/s (from memory). */
    private static final double FACE_MILL_RIM = 30;

    @Override
    public String slug() {
        return "too-fast-for-the-tool";
    }

    /** A limit, and whether it stands in the shop's row; a usual one that nobody confirmed does not stop a plan. */
    private record Bound(String device, double most, boolean confirmed) {}

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
        return Stream.concat(bounds(holder.get()), bounds(cutter.get()))
                .min(Comparator.comparingDouble(Bound::most))
                .map(bound -> judged(in, bound))
                .orElse(Finding.HOLDS);
    }

    private static Stream<Bound> bounds(Holder holder) {
        Typed<SpindleSpeed> fastest = holder.fastest();
        if (fastest != null) {
            return Stream.of(new Bound(holder.name(), fastest.inside(), true));
        }
        return switch (holder.style()) {
            case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS ->
                Stream.of(new Bound(holder.name(), Unit.RPM.toInside(DRILL_CHUCK), false));
            case SPINDLE_COLLET,
                    COLLET_CHUCK,
                    SET_SCREW,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER -> Stream.of();
        };
    }

    private static Stream<Bound> bounds(Cutter cutter) {
        if (cutter.form() != Cutter.Form.FACE_MILL) {
            return Stream.of();
        }
        double most = SpeedAndFeed.spindleSpeed(
                Unit.M_PER_S.toInside(FACE_MILL_RIM), cutter.diameter().inside());
        return Stream.of(new Bound(cutter.name(), most, false));
    }

    private Finding judged(Operations.In in, Bound bound) {
        Margin margin = Margin.of(
                slug(),
                in.place("spindle-speed"),
                "Speed of the " + bound.device(),
                Figure.atMost(bound.most(), in.operation().speed().value().inside(), Unit.RPM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, bound.confirmed() ? Severity.STOP : Severity.CAUTION, message(in, bound));
    }

    private static String message(Operations.In in, Bound bound) {
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
