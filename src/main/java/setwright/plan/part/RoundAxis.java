package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Attitude;
import setwright.geometry.Heading;
import setwright.geometry.Prism;
import setwright.geometry.Side;
import setwright.geometry.Solid;
import setwright.geometry.plane.Point2;
import setwright.job.Divided;
import setwright.job.Edge;
import setwright.job.Feature;
import setwright.job.Flats;

/** What is cut round an axis, position by position: how often, where on the part, and how high. */
final class RoundAxis {
    private RoundAxis() {}

    /** How often the same cut is made, the part turned between; 1 where it is not turned. */
    static int repeats(Feature feature) {
        return switch (feature.kind()) {
            case FLATS -> ((Flats) feature).count();
            case DIVIDED -> ((Divided) feature).what() == Divided.What.HOLES ? 1 : ((Divided) feature).count();
            default -> 1;
        };
    }

    /** The side that faces the machinist where the axis lies along the table, else the one that faces left. */
    static Side cutSide(Laid laid, Side axis) {
        Attitude attitude = new Attitude(laid.up(), laid.quarterTurns());
        boolean alongX = attitude.facing(axis).x() != 0;
        return attitude.sideFacing(alongX ? Heading.MINUS_Y : Heading.MINUS_X);
    }

    /** The edge of the side that is up which lies toward another side. */
    static Edge toward(Side up, Side other) {
        if (other.outward() == up.u()) {
            return Edge.RIGHT;
        }
        if (other.outward() == up.u().opposite()) {
            return Edge.LEFT;
        }
        return other.outward() == up.v() ? Edge.HIGH : Edge.LOW;
    }

    /** Whether the axis lies level. */
    static boolean lies(Laid laid, Side axis) {
        return axis != laid.up() && axis != laid.up().opposite() && !laid.tilted();
    }

    /** Height of a lying axis in the middle of the part. */
    static double axis(Heights heights) {
        return (heights.partBottom() + heights.startTop()) / 2;
    }

    /** Height of a flat above a lying axis: half of what is across two, else what is left over the far side. */
    static double flat(Flats flats, Heights heights) {
        double across = MilledFeatures.mm(flats.across());
        double round = (heights.startTop() - heights.partBottom()) / 2;
        return axis(heights) + (flats.count() % 2 == 0 ? across / 2 : across - round);
    }

    /** What an even number of flats takes besides the upper one, where that is upright: the lower, of four the others. */
    static List<Solid> otherFlats(Flats flats, Prism upper, Heights heights) {
        List<Solid> found = new ArrayList<>();
        double axis = axis(heights);
        double away = upper.zLow() - axis;
        if (flats.count() % 2 == 0) {
            found.add(new Prism(upper.region(), heights.partBottom() - 1, axis - away));
        }
        if (flats.count() == 4) {
            var box = upper.region().box();
            boolean alongX = box.length() < box.depth();
            double middle = alongX ? (box.yLow() + box.yHigh()) / 2 : (box.xLow() + box.xHigh()) / 2;
            for (int way : new int[] {-1, 1}) {
                double from = middle + way * away;
                double to = middle + way * (heights.length() + heights.depth());
                Point2 a = alongX ? new Point2(box.xLow(), from) : new Point2(from, box.yLow());
                Point2 b = alongX ? new Point2(box.xHigh(), to) : new Point2(to, box.yHigh());
                found.add(Prism.box(a, b, heights.partBottom() - 1, heights.startTop() + 1));
            }
        }
        return found;
    }
}
