package setwright.plan.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnTable;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.plan.Rows;
import setwright.shop.Jack;
import setwright.shop.Parallels;
import setwright.shop.SetUpBlocks;

/**
 * Where the packing of a part on the table stands: a block under every strap as far as there are blocks, or a parallel
 * across under those of either end; without straps under either quarter.
 */
public final class PackingPlaces {
    /** Room between a bolt and the middle of what is put beside it, besides twice its diameter, mm. */
    private static final double BESIDE_BOLT = 8;

    private PackingPlaces() {}

    public static List<PackingPlace> of(DrawnTable holding, Heights heights, Rows rows) {
        TableHolding.Seat seat = holding.seat().value();
        if (seat != TableHolding.Seat.PACKING && seat != TableHolding.Seat.JACKS) {
            return List.of();
        }
        List<Point2> pads = StrapPlace.all(holding.straps(), heights, rows).stream()
                .filter(place -> place.by() != Strapping.By.EDGE_CLAMP)
                .map(place -> place.by() == Strapping.By.BOLT ? beside(place, heights) : place.pad())
                .toList();
        String id = holding.packing().value();
        if (seat == TableHolding.Seat.JACKS) {
            return rows.row(id, Jack.class)
                    .map(row -> jacks(pads, row, heights))
                    .orElse(List.of());
        }
        Optional<SetUpBlocks> blocks = rows.row(id, SetUpBlocks.class);
        if (blocks.isPresent()) {
            double height = holding.packingHeight().value().inside();
            return blocks(under(pads, blocks.get(), heights), foot(blocks.get(), height), heights);
        }
        return rows.parallels(id)
                .map(row -> across(ends(pads, heights), row, heights))
                .orElse(List.of());
    }

    /** A jack under every pad, and a third where there are but two: three bear without rocking. */
    private static List<PackingPlace> jacks(List<Point2> pads, Jack row, Heights heights) {
        List<Point2> under = new ArrayList<>(pads.isEmpty() ? quarters(heights) : pads);
        if (under.size() == 2) {
            Point2 middle = under.get(0).plus(under.get(1)).times(0.5);
            double half = row.foot().inside() / 2;
            boolean front = middle.y() - heights.front() > heights.back() - middle.y();
            under.add(new Point2(middle.x(), front ? heights.front() + half : heights.back() - half));
        }
        Point2 half = new Point2(row.foot().inside(), row.foot().inside()).times(0.5);
        List<PackingPlace> found = new ArrayList<>();
        for (Point2 place : under) {
            found.add(new PackingPlace("jack " + (found.size() + 1), PlanBox.of(place.minus(half), place.plus(half))));
        }
        return found;
    }

    /** A bolt leaves no room straight under it: beside it, toward the middle of the part. */
    private static Point2 beside(StrapPlace bolt, Heights heights) {
        double middle = (heights.left() + heights.right()) / 2;
        double way = bolt.pad().x() < middle ? 1 : -1;
        return bolt.pad().plus(new Point2(way * (BESIDE_BOLT + 2 * bolt.stud()), 0));
    }

    /** Under every strap where the blocks suffice, else on the middle line under those of either end. */
    private static List<Point2> under(List<Point2> pads, SetUpBlocks row, Heights heights) {
        if (pads.isEmpty()) {
            return quarters(heights);
        }
        int owned = row.kept().owned();
        if (owned < 0 || owned * row.pieces() >= pads.size()) {
            return pads;
        }
        double middle = (heights.front() + heights.back()) / 2;
        return ends(pads, heights).stream().map(x -> new Point2(x, middle)).toList();
    }

    /** The two sizes that are not upright, the smaller first. */
    private static Point2 foot(SetUpBlocks blocks, double height) {
        List<Double> sizes = new ArrayList<>(
                blocks.sizes().stream().map(size -> size.inside()).toList());
        sizes.stream()
                .min(Comparator.comparingDouble(size -> Math.abs(size - height)))
                .ifPresent(sizes::remove);
        return sizes.size() < 2 ? new Point2(height, height) : new Point2(sizes.get(0), sizes.get(1));
    }

    private static List<PackingPlace> blocks(List<Point2> under, Point2 foot, Heights heights) {
        List<PackingPlace> found = new ArrayList<>();
        for (Point2 place : under) {
            Point2 half = foot.times(0.5);
            Point2 middle = new Point2(
                    within(place.x(), heights.left() + half.x(), heights.right() - half.x()),
                    within(place.y(), heights.front() + half.y(), heights.back() - half.y()));
            found.add(new PackingPlace(
                    "packing " + (found.size() + 1), PlanBox.of(middle.minus(half), middle.plus(half))));
        }
        return found;
    }

    private static List<PackingPlace> across(List<Double> at, Parallels row, Heights heights) {
        double half = row.thickness().inside() / 2;
        double reach = row.length().inside() / 2;
        double middle = (heights.front() + heights.back()) / 2;
        List<PackingPlace> found = new ArrayList<>();
        for (double x : at) {
            double inside = within(x, heights.left() + half, heights.right() - half);
            found.add(new PackingPlace(
                    "packing " + (found.size() + 1),
                    PlanBox.of(new Point2(inside - half, middle - reach), new Point2(inside + half, middle + reach))));
        }
        return found;
    }

    private static List<Double> ends(List<Point2> pads, Heights heights) {
        double left = pads.stream().mapToDouble(Point2::x).min().orElse(heights.left() + heights.length() / 4);
        double right = pads.stream().mapToDouble(Point2::x).max().orElse(heights.right() - heights.length() / 4);
        return List.of(left, right);
    }

    private static List<Point2> quarters(Heights heights) {
        double middle = (heights.front() + heights.back()) / 2;
        return List.of(
                new Point2(heights.left() + heights.length() / 4, middle),
                new Point2(heights.right() - heights.length() / 4, middle));
    }

    private static double within(double value, double least, double greatest) {
        return greatest < least ? (least + greatest) / 2 : Math.max(least, Math.min(greatest, value));
    }
}
