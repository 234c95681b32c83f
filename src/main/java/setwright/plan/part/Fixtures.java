package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnHolding;
import setwright.job.DrawnVise;
import setwright.plan.Rows;
import setwright.shop.MachineTable;
import setwright.shop.Vise;

/** Every body that stands on the table in a set-up, besides the part. */
final class Fixtures {
    /** How far the casting goes on behind the solid jaw's plate, mm (common practice). */
    private static final double BEHIND_JAW = 30;

    /** Thickness drawn for the table, mm. */
    private static final double TABLE_THICKNESS = 60;

    private Fixtures() {}

    static List<Body> of(DrawnHolding holding, Heights heights, Rows rows) {
        List<Body> bodies = new ArrayList<>();
        bodies.add(table(rows.machine().table()));
        switch (holding.kind()) {
            case VISE -> {
                DrawnVise drawn = (DrawnVise) holding;
                rows.vise(drawn.vise().value()).ifPresent(vise -> addVise(bodies, vise, heights));
                addParallels(bodies, drawn, heights, rows);
            }
        }
        return bodies;
    }

    private static Body table(MachineTable table) {
        double x = table.length().inside() / 2;
        double y = table.width().inside() / 2;
        return box("table", Role.TABLE, new Point2(-x, -y), new Point2(x, y), -TABLE_THICKNESS, 0);
    }

    private static void addVise(List<Body> bodies, Vise vise, Heights heights) {
        double half = vise.jawWidth().inside() / 2;
        double thick = vise.jawThickness().inside();
        double rear = heights.back() + thick + BEHIND_JAW;
        bodies.add(box(
                "vise bed",
                Role.VISE_BED,
                new Point2(-half, rear - vise.bodyLength().inside()),
                new Point2(half, rear),
                0,
                heights.bed()));
        bodies.add(box(
                "solid jaw",
                Role.SOLID_JAW,
                new Point2(-half, heights.back()),
                new Point2(half, heights.back() + thick),
                heights.bed(),
                heights.jawTop()));
        bodies.add(box(
                "moving jaw",
                Role.MOVING_JAW,
                new Point2(-half, heights.front() - thick),
                new Point2(half, heights.front()),
                heights.bed(),
                heights.jawTop()));
    }

    private static void addParallels(List<Body> bodies, DrawnVise holding, Heights heights, Rows rows) {
        if (!holding.onParallels()) {
            return;
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
    }

    private static Body parallel(String name, double half, double from, double to, Heights heights) {
        return box(
                name,
                Role.PARALLEL,
                new Point2(-half, from),
                new Point2(half, to),
                heights.bed(),
                heights.partBottom());
    }

    private static Body box(String name, Role role, Point2 corner, Point2 opposite, double low, double high) {
        return new Body(name, role, Prism.box(corner, opposite, low, high));
    }
}
