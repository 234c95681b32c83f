package setwright.plan.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.PlanBox;
import setwright.holding.StrapGrip.Bearing;
import setwright.holding.balance.Vector;
import setwright.job.DrawnDevice;
import setwright.job.DrawnTable;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.PackingPlace;
import setwright.plan.part.PackingPlaces;
import setwright.shop.VBlocks;

/** What bears a part besides the places straight under its straps; mm from its left front bottom corner. */
final class Bearings {
    private Bearings() {}

    /** The corners of a face that bears it whole. */
    static List<Bearing> face(Heights heights) {
        return corners("bearing face", 0, heights.length(), 0, heights.depth());
    }

    /** The corners of all packing together, as far as it is under the part. */
    static List<Bearing> packing(DrawnTable table, Heights heights, Rows rows) {
        List<PackingPlace> places = PackingPlaces.of(table, heights, rows);
        if (places.isEmpty()) {
            return face(heights);
        }
        PlanBox all = PlanBox.EMPTY;
        for (PackingPlace place : places) {
            all = all.and(place.plan());
        }
        return corners(
                "packing",
                Math.max(0, all.xLow() - heights.left()),
                Math.min(heights.length(), all.xHigh() - heights.left()),
                Math.max(0, all.yLow() - heights.front()),
                Math.min(heights.depth(), all.yHigh() - heights.front()));
    }

    /** The head of every jack. */
    static List<Bearing> jacks(DrawnTable table, Heights heights, Rows rows) {
        return PackingPlaces.of(table, heights, rows).stream()
                .map(place -> Bearing.beside(
                        place.name(),
                        new Vector(
                                place.plan().middle().x() - heights.left(),
                                place.plan().middle().y() - heights.front(),
                                0),
                        Vector.UP))
                .toList();
    }

    /** Two blocks under the quarters. */
    static List<Bearing> blocks(Heights heights) {
        return corners("blocks", heights.length() / 4, heights.length() * 3 / 4, 0, heights.depth());
    }

    private static List<Bearing> corners(String name, double left, double right, double front, double back) {
        return List.of(
                Bearing.beside(name + ", front left", new Vector(left, front, 0), Vector.UP),
                Bearing.beside(name + ", front right", new Vector(right, front, 0), Vector.UP),
                Bearing.beside(name + ", back left", new Vector(left, back, 0), Vector.UP),
                Bearing.beside(name + ", back right", new Vector(right, back, 0), Vector.UP));
    }

    /** The two edges of a slot under a bar. */
    static Cradle slot(Heights heights, Rows rows) {
        double width = Math.min(rows.machine().table().slotWidth().inside(), heights.depth());
        double slant = StrictMath.asin(width / heights.depth());
        return new Cradle("slot edge", slant, List.of(0.0, heights.length()));
    }

    /** The flanks of two V-blocks under the quarters of a bar. */
    static Optional<Cradle> vees(DrawnDevice device, Heights heights, Rows rows) {
        return rows.row(device.device().value(), VBlocks.class).map(row -> {
            double half = row.length().inside() / 2;
            double quarter = heights.length() / 4;
            List<Double> along = List.of(quarter - half, quarter + half, 3 * quarter - half, 3 * quarter + half);
            return new Cradle("vee", (Math.PI - row.angle().inside()) / 2, along);
        });
    }

    /**
     * Two lines along a bar that bear it from below, one on either side.
     *
     * @param slant of their normals from upright, rad
     * @param along places along the bar where they are counted
     */
    record Cradle(String name, double slant, List<Double> along) {
        List<Bearing> at(double x, String where, double radius, boolean across) {
            double share = across ? 1 : 0.5;
            Vector axis = new Vector(x, radius, radius);
            List<Bearing> found = new ArrayList<>();
            for (int side : List.of(-1, 1)) {
                Vector normal = new Vector(0, -side * StrictMath.sin(slant), StrictMath.cos(slant));
                String name = (side < 0 ? "front " : "back ") + this.name + where;
                found.add(new Bearing(name, axis.minus(normal.times(radius)), normal, share));
            }
            return found;
        }
    }
}
