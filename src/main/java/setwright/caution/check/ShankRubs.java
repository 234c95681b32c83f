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
import setwright.job.Operation;
import setwright.job.WoodruffSeat;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.KeyseatCutter;

/** Flutes shorter than the cut is deep: the shank of a cutter rubs on the wall, the flutes of a drill are shut in its hole. */
public final class ShankRubs implements Check {
    /** A shank thinner than its cutter by this much does not reach the wall, mm on the diameter (common practice). */
    private static final double CLEARS = 0.1;

    @Override
    public String slug() {
        return "shank-rubs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug(), ShankRubs::meant, this::look);
    }

    /** Reamers have thinner shanks and taps a neck: neither is looked at. A spot drill only marks. */
    private static boolean meant(Operations.In in) {
        return !in.makesHoles() || in.operation().kind() == Operation.Kind.DRILL;
    }

    private Finding look(Operations.In in, OperationCut cut) {
        Cutter cutter = in.cutterRow().orElseThrow();
        if (cutter instanceof KeyseatCutter seat) {
            return neck(in, cut, seat);
        }
        double flutes = cutter.fluteLength().inside();
        double deep = deep(in, cut);
        boolean mills = !in.makesHoles();
        if (mills && cutter.shank().inside() <= cutter.diameter().inside() - CLEARS) {
            return Finding.HOLDS;
        }
        Margin margin =
                Margin.of(slug(), in.place("flutes"), "Flutes of " + in.cutter(), Figure.atMost(flutes, deep, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, mills ? Severity.STOP : Severity.CAUTION, message(in, flutes, deep));
    }

    /** A seat is as deep as the head stands out over its neck, at most. */
    private Finding neck(Operations.In in, OperationCut cut, KeyseatCutter cutter) {
        double out = (cutter.diameter().inside() - cutter.neckDiameter().inside()) / 2;
        Margin margin = Margin.of(
                slug(),
                in.place("neck"),
                "Head over the neck of " + in.cutter(),
                Figure.atMost(out, sunk(in, cut), Unit.MM));
        Words words = new Words(in.plan());
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(
                        margin,
                        Severity.STOP,
                        "The neck of " + in.cutter() + " rubs on the shaft " + in.at() + ": its head stands out "
                                + words.length(out) + " and the seat goes " + words.length(sunk(in, cut))
                                + " in. It burns and breaks: take a larger cutter, or a key that sits less deep.");
    }

    /** At the side of the seat, where the neck is: lower than the crown. */
    private static double sunk(Operations.In in, OperationCut cut) {
        return in.plan().job().plan().features().stream()
                .filter(feature -> in.operation().features().contains(feature.id()))
                .filter(WoodruffSeat.class::isInstance)
                .mapToDouble(seat -> ((WoodruffSeat) seat).depth().nominal().inside())
                .max()
                .orElse(cut.width());
    }

    /** A face has no wall but that of the pass; everything else stands in its whole depth. */
    private static double deep(Operations.In in, OperationCut cut) {
        return in.operation().kind() == Operation.Kind.FACE
                ? cut.depth()
                : in.plan()
                        .part()
                        .operation(in.operation().id())
                        .map(ShankRubs::wall)
                        .orElse(cut.depth());
    }

    private static double wall(OperationStage on) {
        return on.workTop() - on.lowest();
    }

    private static String message(Operations.In in, double flutes, double deep) {
        Words words = new Words(in.plan());
        String why = in.makesHoles()
                ? " The chips cannot get out and the drill jams in its hole: take a longer drill, or drill part way,"
                        + " clear the chips and go on."
                : " The shank rubs on what the flutes left standing: take a cutter with longer flutes or less depth.";
        return in.cutter() + " " + in.at() + " works " + words.length(deep) + " deep and has " + words.length(flutes)
                + " of flutes." + why;
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        Figure figure = caution.figure();
        List<Proposal> all = new ArrayList<>();
        if (figure != null) {
            all.addAll(ToolChanges.of(plan, caution)
                    .otherCutters(cutter -> cutter.fluteLength().inside() >= figure.value()));
        }
        all.addAll(CutChanges.of(plan, caution).shallower());
        return all;
    }
}
