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
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Unit;
import setwright.shop.Cutter;
import setwright.shop.ToolMaterial;

/** A slender end mill, judged by its stick-out where nobody measured how it rings. */
public final class ChatterLikely implements Check {
    /** A pass deeper than this share of the diameter is roughing. */
    private static final double ROUGHING = 0.5;

    @Override
    public String slug() {
        return "chatter-likely";
    }

    /** Stick-out over diameter, from which on it is said (common practice). */
    private record Slender(double note, double caution) {
        static Slender of(ToolMaterial material) {
            return switch (material) {
                case HSS -> new Slender(4, 6);
                case CARBIDE -> new Slender(5, 8);
            };
        }
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug(), ChatterLikely::meant, this::look);
    }

    private static boolean meant(Operations.In in) {
        return !in.makesHoles()
                && in.cutterRow()
                        .map(Cutter::form)
                        .filter(Cutter.Form.END_MILL::equals)
                        .isPresent();
    }

    private Finding look(Operations.In in, OperationCut cut) {
        Cutter cutter = in.cutterRow().orElseThrow();
        double diameter = cutter.diameter().inside();
        double slender = in.operation().stickOut().value().inside() / diameter;
        Slender limits = Slender.of(cutter.material());
        boolean roughing = cut.depth() > ROUGHING * diameter;
        Margin margin = Margin.of(
                slug(),
                in.place("tool"),
                "Stick-out of " + in.cutter() + " in diameters",
                Figure.atMost(roughing ? limits.note() : limits.caution(), slender, Unit.NONE));
        if (!margin.figure().holds()) {
            return Finding.fails(
                    margin,
                    Severity.CAUTION,
                    message(in, slender, margin.figure().limit(), roughing));
        }
        return slender > limits.note()
                ? Finding.fails(margin, Severity.NOTE, message(in, slender, limits.note(), false))
                : Finding.holds(margin);
    }

    private static String message(Operations.In in, double slender, double limit, boolean roughing) {
        Words words = new Words(in.plan());
        String pass = roughing ? " and roughs deeper than half of it" : "";
        return in.cutter() + " stands out " + words.printing().factor(slender) + " times its diameter" + pass + " "
                + in.at() + "; from " + words.printing().factor(limit)
                + " times on it rings. At this speed no chart says where it is quiet: less stick-out, or take lighter passes.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(CutChanges.of(plan, caution).shallower());
        all.addAll(tool.otherHolders());
        all.addAll(tool.cutterToPencil());
        return all;
    }
}
