package setwright.plan.part;

import java.util.List;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.ArcSlot;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Edge;
import setwright.job.Keyseat;
import setwright.job.Placed;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.TSlot;

/** Where the cutter's axis runs in slots of every kind; places on the side, from its middle. */
record SlotFeatures(SideOnTable side, double cutter, boolean climb) {
    Milled slot(Slot slot) {
        Size length = slot.length();
        SlotWay way = way(slot.width());
        return length == null
                ? openSlot(way, slot.place())
                : way.closed(mm(length)).mapped(side.set(slot.place()));
    }

    private Milled openSlot(SlotWay way, Placed place) {
        PlanMap set = side.set(place);
        List<Double> ends = ends(set, way.width());
        return ends.isEmpty()
                ? Milled.NOTHING
                : way.open(ends.get(0), ends.get(1)).mapped(set);
    }

    Milled arc(ArcSlot slot) {
        double from = slot.from().inside();
        double turn = slot.to().inside() - from;
        double sweep = turn - 2 * Math.PI * (Math.ceil(turn / (2 * Math.PI) - 1e-12) - 1);
        Point2 centre = side.place(slot.centre());
        SlotWay way = way(slot.width());
        return way.arc(slot.radius().inside(), from, sweep).mapped(PlanMap.shift(centre.x(), centre.y()));
    }

    /** Where a band along x, so wide, enters and leaves the side, along x; empty where it misses it. */
    private List<Double> ends(PlanMap set, double width) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double y : List.of(-width / 2, 0.0, width / 2)) {
            List<Double> crossed = crossed(set.of(new Point2(0, y)), set.of(new Point2(1, y)));
            if (!crossed.isEmpty()) {
                low = Math.min(low, crossed.get(0));
                high = Math.max(high, crossed.get(1));
            }
        }
        return low < high ? List.of(low, high) : List.of();
    }

    /** How far from a place towards another, 1 mm off, a straight line enters and leaves the side. */
    private List<Double> crossed(Point2 from, Point2 to) {
        double[] span = {-1e6, 1e6};
        narrow(span, from.x(), to.x() - from.x(), side.sizeU() / 2);
        narrow(span, from.y(), to.y() - from.y(), side.sizeV() / 2);
        return span[0] < span[1] ? List.of(span[0], span[1]) : List.of();
    }

    private static void narrow(double[] span, double at, double step, double half) {
        if (Math.abs(step) < 1e-12) {
            span[1] = Math.abs(at) > half ? span[0] : span[1];
            return;
        }
        double one = (-half - at) / step;
        double other = (half - at) / step;
        span[0] = Math.max(span[0], Math.min(one, other));
        span[1] = Math.min(span[1], Math.max(one, other));
    }

    /** Along the longer way of the side; without a length to the nearer end of it. */
    Milled keyseat(Keyseat seat) {
        boolean alongV = side.sizeV() > side.sizeU();
        PlanMap along = alongV ? PlanMap.quarterTurns(1) : PlanMap.quarterTurns(0);
        Point2 middle = side.place(seat.place());
        double at = alongV ? middle.y() : middle.x();
        Size length = seat.length();
        SlotWay way = way(seat.width());
        PlanMap shift = PlanMap.shift(middle.x(), middle.y());
        if (length != null) {
            return way.closed(mm(length)).mapped(along.then(shift));
        }
        double half = Math.max(side.sizeU(), side.sizeV()) / 2 - Math.abs(at);
        PlanMap turned = PlanMap.quarterTurns(at < 0 ? 2 : 0).then(along).then(shift);
        return way.halfOpen(-half, half).mapped(turned);
    }

    /** Along a lying axis from the end at an edge of the side; without a length from end to end. */
    Milled spline(Divided spline, Edge end) {
        boolean alongU = end == Edge.LEFT || end == Edge.RIGHT;
        double half = (alongU ? side.sizeU() : side.sizeV()) / 2;
        Size width = spline.width();
        if (width == null) {
            return Milled.NOTHING;
        }
        int turns = switch (end) {
            case RIGHT -> 0;
            case HIGH -> 1;
            case LEFT -> 2;
            case LOW -> 3;
        };
        Size length = spline.length();
        SlotWay way = way(width);
        Milled cut = length == null ? way.open(-half, half) : way.halfOpen(half - mm(length), half);
        return cut.notGone().mapped(PlanMap.quarterTurns(turns));
    }

    /** The neck, then the head under it; a T-slot that is closed at its ends is not worked out. */
    Milled tSlot(TSlot slot, boolean head) {
        if (slot.length() != null) {
            return Milled.NOTHING;
        }
        return head
                ? openSlot(way(slot.headWidth()), slot.place()).under(mm(slot.headHeight()))
                : openSlot(way(slot.neck()), slot.place());
    }

    /** The slot between the flanks, then both flanks under them; a standing tail is not worked out. */
    Milled dovetail(Dovetail tail, boolean flanks) {
        if (tail.male()) {
            return Milled.NOTHING;
        }
        double depth = mm(tail.depth());
        double flank = depth / StrictMath.tan(tail.angle().inside());
        if (!flanks) {
            return openSlot(way(mm(tail.width()) - 2 * flank), tail.place());
        }
        Milled both = openSlot(way(mm(tail.width())), tail.place());
        return new Milled(both.lanes(), Region.NONE, depth);
    }

    private SlotWay way(Size width) {
        return way(mm(width));
    }

    private SlotWay way(double width) {
        return new SlotWay(width, cutter, climb);
    }

    private static double mm(Size size) {
        return MilledFeatures.mm(size);
    }
}
