package setwright.caution.check;

import java.util.ArrayList;
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
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** A shank that is not far enough in, or flutes that are gripped. */
public final class ShortGrip implements Check {
    /** Least of the shank of an end mill in a spindle collet, mm (common practice). */
    private static final double IN_SPINDLE_COLLET = 20;

    /** Least of any shank, in diameters of it (common practice). */
    private static final double DIAMETERS = 1.5;

    /** So much of a thin shank is enough anywhere, in diameters of it (common practice). */
    private static final double PLENTY = 3;

    @Override
    public String slug() {
        return "short-grip";
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
        return holder.get().style() == Holder.Style.FACE_MILL_ARBOR
                        || cutter.get().bored()
                ? Finding.HOLDS
                : look(in, cutter.get(), holder.get());
    }

    private Finding look(Operations.In in, Cutter cutter, Holder holder) {
        double out = in.operation().stickOut().value().inside();
        double flutes = cutter.fluteLength().inside();
        double gripped = Math.max(0, cutter.overallLength().inside() - out);
        double asked = asked(cutter, holder);
        boolean onFlutes = out < flutes && gripped >= asked;
        Margin margin = Margin.of(
                slug(),
                in.place("shank"),
                "Grip on " + in.cutter(),
                onFlutes ? Figure.atLeast(flutes, out, Unit.MM) : Figure.atLeast(asked, gripped, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, onFlutes ? onFlutes(in, flutes, out) : message(in, margin));
    }

    /** A collet chuck wants two thirds of its collet, which is the grip that its row says. */
    private static double asked(Cutter cutter, Holder holder) {
        double shank = cutter.shank().inside();
        boolean mills = cutter.form() == Cutter.Form.END_MILL;
        return switch (holder.style()) {
            case SPINDLE_COLLET -> mills ? Math.max(IN_SPINDLE_COLLET, DIAMETERS * shank) : DIAMETERS * shank;
            case COLLET_CHUCK ->
                mills ? holder.grip().inside() : Math.min(holder.grip().inside(), PLENTY * shank);
            case SET_SCREW,
                    DRILL_CHUCK_KEYED,
                    DRILL_CHUCK_KEYLESS,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER -> Math.min(holder.grip().inside(), DIAMETERS * shank);
        };
    }

    private static String message(Operations.In in, Margin margin) {
        Words words = new Words(in.plan());
        return in.cutter() + " goes " + words.length(margin.figure().value()) + " into the "
                + words.holder(in.operation()) + " " + in.at() + "; "
                + words.length(margin.figure().limit())
                + " are asked. A short grip lets the tool tilt and walk out: less stick-out, or a longer shank.";
    }

    private static String onFlutes(Operations.In in, double flutes, double out) {
        Words words = new Words(in.plan());
        return words.holder(in.operation()) + " grips " + words.length(flutes - out) + " of the flutes of "
                + in.cutter() + " " + in.at()
                + ". Their edges mark the collet and hold on three lines: more stick-out, or a shorter cutter.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(tool.otherHolders());
        return all;
    }
}
