package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;
import setwright.plan.Rows;
import setwright.shop.Vise;

/** A vise with its jaws and parallels as bodies. */
public final class ViseBodies {
    /** How far the casting goes on behind the solid jaw's plate, mm (common practice). */
    private static final double BEHIND_JAW = 30;

    /** Diameter of the bar at the moving jaw, mm (common practice: 10 to 12). */
    private static final double ROUND_BAR = 12;

    /** Thickness of the strip of lead, copper or fibre, mm (common practice). */
    private static final double SOFT_STRIP = 2;

    /** Width of the step that is cut into soft jaws, mm (common practice). */
    private static final double LEDGE = 5;

    private ViseBodies() {}

    /** Every vise of a holding with what is in it. */
    static List<Body> of(DrawnVise holding, Vise vise, Heights heights, Rows rows) {
        JawPlates jaws = JawPlates.of(holding, vise, rows);
        double gap = gap(holding);
        List<Double> middles = JawPlates.middles(holding);
        List<Body> bodies = new ArrayList<>();
        for (double x : middles) {
            Which which = new Which(x, middles.size() == 1 ? "" : x < 0 ? "left " : x > 0 ? "right " : "middle ");
            bodies.addAll(vise(vise, jaws, heights.front() - gap, heights.back(), which));
            if (gap > 0) {
                bodies.add(between(holding, vise, jaws, heights, which));
            }
            if (jaws.cut() > 0) {
                bodies.addAll(steps(holding, vise, jaws, heights, which));
            } else {
                bodies.addAll(parallels(holding, heights, which, rows));
            }
        }
        return bodies;
    }

    /** One of several vises: the middle of its jaws, and its place as a word; empty for one alone. */
    private record Which(double x, String word) {
        static final Which ONE = new Which(0, "");
    }

    /** How far what is put at the moving jaw keeps it off the part, mm. */
    public static double gap(DrawnVise holding) {
        return switch (holding.between().value()) {
            case NOTHING, PAPER -> 0;
            case ROUND_BAR -> ROUND_BAR;
            case SOFT_STRIP -> SOFT_STRIP;
        };
    }

    /** @param front where the moving jaw bears; the solid one bears as far behind the middle */
    static List<Body> vise(Vise vise, JawPlates jaws, double front, Heights heights) {
        return vise(vise, jaws, front, (heights.front() + heights.back()) - front, Which.ONE);
    }

    private static List<Body> vise(Vise vise, JawPlates jaws, double front, double back, Which which) {
        double half = vise.jawWidth().inside() / 2;
        double left = which.x() - half;
        double right = which.x() + half;
        double bed = vise.bedHeight().inside();
        double thick = jaws.thickness();
        double rear = back + thick + BEHIND_JAW;
        double top = bed + jaws.height();
        List<Body> bodies = new ArrayList<>();
        bodies.add(Fixtures.box(
                which.word() + "vise bed",
                Role.VISE_BED,
                new Point2(left, rear - vise.bodyLength().inside()),
                new Point2(right, rear),
                0,
                bed));
        bodies.add(Fixtures.box(
                which.word() + "solid jaw",
                Role.SOLID_JAW,
                new Point2(left, back),
                new Point2(right, back + thick),
                bed,
                top));
        bodies.add(Fixtures.box(
                which.word() + "moving jaw",
                Role.MOVING_JAW,
                new Point2(left, front - thick),
                new Point2(right, front),
                bed,
                top));
        return bodies;
    }

    /** The round bar lies at half the depth of the grip; a strip is as high as the jaw. */
    private static Body between(DrawnVise holding, Vise vise, JawPlates jaws, Heights heights, Which which) {
        double half = vise.jawWidth().inside() / 2;
        boolean bar = holding.between().value() == ViseHolding.Between.ROUND_BAR;
        double middle = heights.partBottom() + heights.gripDepth() / 2;
        double low = bar ? Math.max(heights.bed(), middle - ROUND_BAR / 2) : heights.partBottom();
        double high = bar ? low + ROUND_BAR : heights.bed() + jaws.height();
        return Fixtures.box(
                which.word() + (bar ? "round bar" : "soft strip"),
                Role.MOVING_JAW,
                new Point2(which.x() - half, heights.front() - gap(holding)),
                new Point2(which.x() + half, heights.front()),
                low,
                high);
    }

    /** What is left of soft jaws under the part: a ledge, or all but the gap where they are cut to the outline. */
    private static List<Body> steps(DrawnVise holding, Vise vise, JawPlates jaws, Heights heights, Which which) {
        double half = vise.jawWidth().inside() / 2;
        boolean outline = holding.jawCut().value() == ViseHolding.JawCut.OUTLINE;
        double ledge = outline ? Math.max(LEDGE, heights.depth() / 2 - 1) : Math.min(LEDGE, heights.depth() / 2);
        double top = heights.bed() + jaws.step();
        return List.of(
                Fixtures.box(
                        which.word() + "step of the moving jaw",
                        Role.PARALLEL,
                        new Point2(which.x() - half, heights.front()),
                        new Point2(which.x() + half, heights.front() + ledge),
                        heights.bed(),
                        top),
                Fixtures.box(
                        which.word() + "step of the solid jaw",
                        Role.PARALLEL,
                        new Point2(which.x() - half, heights.back() - ledge),
                        new Point2(which.x() + half, heights.back()),
                        heights.bed(),
                        top));
    }

    private static List<Body> parallels(DrawnVise holding, Heights heights, Which which, Rows rows) {
        List<Body> bodies = new ArrayList<>();
        if (!holding.onParallels()) {
            return bodies;
        }
        rows.parallels(holding.parallels().value()).ifPresent(set -> {
            double thick = set.thickness().inside();
            double half = set.length().inside() / 2;
            double inset = holding.parallelInset().value().inside();
            double front = heights.front() + inset;
            double back = heights.back() - inset;
            bodies.add(parallel(which, "front parallel", half, front, front + thick, heights));
            bodies.add(parallel(which, "back parallel", half, back - thick, back, heights));
        });
        return bodies;
    }

    private static Body parallel(Which which, String name, double half, double from, double to, Heights heights) {
        return Fixtures.box(
                which.word() + name,
                Role.PARALLEL,
                new Point2(which.x() - half, from),
                new Point2(which.x() + half, to),
                heights.bed(),
                heights.partBottom());
    }
}
