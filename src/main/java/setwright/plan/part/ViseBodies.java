package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnVise;
import setwright.plan.Rows;
import setwright.shop.Vise;

/** A vise with its jaws and parallels as bodies. */
final class ViseBodies {
    /** How far the casting goes on behind the solid jaw's plate, mm (common practice). */
    private static final double BEHIND_JAW = 30;

    private ViseBodies() {}

    /** @param front where the moving jaw bears; the solid one bears as far behind the middle */
    static List<Body> vise(Vise vise, JawPlates jaws, double front, Heights heights) {
        double half = vise.jawWidth().inside() / 2;
        double back = (heights.front() + heights.back()) - front;
        double bed = vise.bedHeight().inside();
        double thick = jaws.thickness();
        double rear = back + thick + BEHIND_JAW;
        double top = bed + jaws.height();
        List<Body> bodies = new ArrayList<>();
        bodies.add(Fixtures.box(
                "vise bed",
                Role.VISE_BED,
                new Point2(-half, rear - vise.bodyLength().inside()),
                new Point2(half, rear),
                0,
                bed));
        bodies.add(Fixtures.box(
                "solid jaw", Role.SOLID_JAW, new Point2(-half, back), new Point2(half, back + thick), bed, top));
        bodies.add(Fixtures.box(
                "moving jaw", Role.MOVING_JAW, new Point2(-half, front - thick), new Point2(half, front), bed, top));
        return bodies;
    }

    static List<Body> parallels(DrawnVise holding, Heights heights, Rows rows) {
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
            bodies.add(parallel("front parallel", half, front, front + thick, heights));
            bodies.add(parallel("back parallel", half, back - thick, back, heights));
        });
        return bodies;
    }

    private static Body parallel(String name, double half, double from, double to, Heights heights) {
        return Fixtures.box(
                name,
                Role.PARALLEL,
                new Point2(-half, from),
                new Point2(half, to),
                heights.bed(),
                heights.partBottom());
    }
}
