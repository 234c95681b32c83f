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
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SurfaceLeft;
import setwright.plan.cut.SurfaceLeft.Surface;
import setwright.plan.cut.Tolerated;
import setwright.quantity.Unit;

/**
 * The last pass leaves a toleranced face or wall out because the tool springs, or roughing springs so far into a wall that
 * the last pass finds nothing there.
 */
public final class ToolSprings implements Check {
    @Override
    public String slug() {
        return "tool-springs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan).filter(ToolSprings::meant).forEach(in -> found.addAll(look(in)));
        return found;
    }

    private static boolean meant(Operations.In in) {
        return switch (in.operation().kind()) {
            case FACE, STEP, PROFILE, POCKET, SLOT, KEYSEAT -> true;
            default -> false;
        };
    }

    /** The toleranced size of the face that an operation cuts; empty where the drawing leaves it general. */
    static Optional<Size> toleranced(Operations.In in) {
        return in.features()
                .filter(feature -> feature.kind() == Feature.Kind.FACE)
                .map(feature -> ((Face) feature).across())
                .filter(Size::toleranced)
                .findFirst();
    }

    private List<Finding> look(Operations.In in) {
        Optional<OperationCut> cut = in.plan().cut().operation(in.operation().id());
        List<Finding> found = new ArrayList<>();
        Optional<Tolerated> allowed = Tolerated.of(in.features());
        if (cut.isEmpty()) {
            return allowed.map(size -> in.unlooked(slug(), "a cutter in its holder with its load")).stream()
                    .toList();
        }
        allowed.ifPresent(size -> surface(cut.get()).ifPresent(left -> found.add(finished(in, left, size))));
        cut.get().left(Surface.ROUGHED_WALL).ifPresent(left -> found.add(roughed(in, left)));
        return found;
    }

    private static Optional<SurfaceLeft> surface(OperationCut cut) {
        return cut.left(Surface.FACE).or(() -> cut.left(Surface.WALL));
    }

    private Finding finished(Operations.In in, SurfaceLeft left, Tolerated allowed) {
        boolean face = left.surface() == Surface.FACE;
        Margin margin = margin(
                in,
                face ? "face" : "wall",
                face ? "Lean of " + in.cutter() + " across the face" : "Spring of " + in.cutter() + " at the wall",
                Figure.atMost(allowed.out(), Math.abs(left.inside()), Unit.MM),
                left);
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, face ? leans(in, left, allowed) : springs(in, left, allowed));
    }

    /** Only what goes into the wall is lost; what stays on is cut by the last pass. */
    private Finding roughed(Operations.In in, SurfaceLeft left) {
        double stock = in.operation().finish().value().inside();
        Margin margin = margin(
                in,
                "roughed-wall",
                "Spring of " + in.cutter() + " into the stock for the last pass",
                Figure.atMost(stock, Math.max(0, -left.inside()), Unit.MM),
                left);
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, digsIn(in, left, stock));
    }

    private Margin margin(Operations.In in, String subject, String what, Figure figure, SurfaceLeft left) {
        Caution.Place place =
                Caution.Place.of(in.setUp().id(), in.operation().id(), subject, subject.replace('-', ' '));
        return Margin.of(slug(), place, what, figure).between(SizeOf.band(left.band()));
    }

    private static String leans(Operations.In in, SurfaceLeft left, Tolerated allowed) {
        Words words = new Words(in.plan());
        return in.cutter() + " leans under the cut and leaves the face " + words.fine(Math.abs(left.inside())) + " out "
                + in.at() + "; the drawing allows " + words.fine(allowed.out())
                + " either way. Less stick-out, a lighter last pass, or a stouter cutter.";
    }

    private static String springs(Operations.In in, SurfaceLeft left, Tolerated allowed) {
        Words words = new Words(in.plan());
        String way = left.inside() < 0 ? "cuts into the wall by " : "leaves on the wall ";
        return in.cutter() + " springs under the cut and " + way + words.fine(Math.abs(left.inside())) + " "
                + in.at() + ", " + words.fine(Math.abs(left.atBottom())) + " at its foot and "
                + words.fine(Math.abs(left.atTop())) + " at its top; the drawing allows " + words.fine(allowed.out())
                + " a wall. Less stick-out, a lighter last pass, a spring pass, or a stouter cutter.";
    }

    private static String digsIn(Operations.In in, SurfaceLeft left, double stock) {
        Words words = new Words(in.plan());
        return in.cutter() + " springs " + words.fine(-left.inside()) + " into the wall while roughing " + in.at()
                + "; " + words.fine(stock) + " are left for the last pass. Leave more, take less, or cut climb.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(cut.shallower());
        if (cut.operation().kind() != Operation.Kind.FACE) {
            all.addAll(LastPassChanges.of(plan, caution).all());
        }
        if (cut.operation().kind() == Operation.Kind.STEP || cut.operation().kind() == Operation.Kind.PROFILE) {
            all.addAll(tool.stouter());
        }
        all.addAll(tool.otherHolders());
        return all;
    }
}
