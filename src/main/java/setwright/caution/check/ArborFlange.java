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
import setwright.geometry.Point3;
import setwright.job.Block;
import setwright.job.Feature;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.plan.Plan;
import setwright.quantity.Unit;
import setwright.reach.Travel;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** A saw whose arbor, collar or screw comes to the work before its rim is down to depth. */
public final class ArborFlange implements Check {
    /** Asked between flange and work when the saw is down, mm (common practice). */
    private static final double CLEARANCE = 1;

    @Override
    public String slug() {
        return "arbor-flange-meets-work";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.all(plan)
                .filter(in -> deepest(in).isPresent())
                .map(in -> sawn(in).map(saw -> look(in, saw)).orElseGet(() -> in.unlooked(slug(), Operations.FOR_TOOL)))
                .toList();
    }

    /**
     * A saw on its arbor.
     *
     * @param depth of the deepest slit it cuts, mm
     */
    private record Sawn(Cutter saw, Holder arbor, double depth) {
        double reach(double clearance) {
            return Travel.sawReach(saw.diameter().inside(), arbor.noseDiameter().inside(), clearance);
        }
    }

    private static Optional<Sawn> sawn(Operations.In in) {
        return in.cutterRow()
                .flatMap(saw -> in.holderRow().flatMap(arbor -> deepest(in).map(depth -> new Sawn(saw, arbor, depth))));
    }

    private static Optional<Double> deepest(Operations.In in) {
        Stream<Feature> slits = in.features().filter(feature -> feature.kind() == Feature.Kind.SLIT);
        return slits.map(slit -> depth(in, (Slit) slit)).max(Comparator.naturalOrder());
    }

    /** What goes right through is as deep as the blank is thick behind that side. */
    private static double depth(Operations.In in, Slit slit) {
        Size depth = slit.depth();
        return depth != null
                ? depth.nominal().inside()
                : slit.side()
                        .size(nominal(in.plan().job().plan().blank().envelope()))
                        .z();
    }

    private static Point3 nominal(Block block) {
        return new Point3(
                block.length().nominal().inside(),
                block.depth().nominal().inside(),
                block.height().nominal().inside());
    }

    private Finding look(Operations.In in, Sawn sawn) {
        Margin margin = Margin.of(
                slug(),
                in.place("flange"),
                "Depth that " + in.cutter() + " reaches",
                Figure.atMost(sawn.reach(CLEARANCE), sawn.depth(), Unit.MM));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        boolean touches = sawn.reach(0) <= sawn.depth();
        return Finding.fails(margin, touches ? Severity.STOP : Severity.CAUTION, message(in, sawn));
    }

    private static String message(Operations.In in, Sawn sawn) {
        Words words = new Words(in.plan());
        return in.cutter() + " " + in.at() + " reaches " + words.length(sawn.reach(CLEARANCE)) + " deep past the "
                + words.length(sawn.arbor().noseDiameter().inside()) + " of " + words.holder(in.operation())
                + " and is to go " + words.length(sawn.depth())
                + ". The collar rides on the work before the slit is deep, and the saw breaks: take a larger saw, an arbor"
                + " with smaller collars, or saw from both sides.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        Figure figure = caution.figure();
        List<Proposal> all = new ArrayList<>();
        if (figure != null) {
            double missing = figure.value() - figure.limit();
            ToolChanges tool = ToolChanges.of(plan, caution);
            double now = plan.rows()
                    .cutter(tool.operation().cutter().value())
                    .map(saw -> saw.diameter().inside())
                    .orElse(0.0);
            all.addAll(tool.otherSizes(saw -> saw.diameter().inside() >= now + 2 * missing));
            all.addAll(tool.otherHolders());
        }
        return all;
    }
}
