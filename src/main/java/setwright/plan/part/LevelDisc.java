package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;

/**
 * The way of a disc that lies level and sinks into a side; x along the side, y into the part.
 *
 * @param radius of the disc
 * @param sunk how far its rim goes into the side
 * @param infeeds how far in on each way past, the last {@code sunk}
 */
record LevelDisc(double radius, double sunk, List<Double> infeeds) {
    /** What is taken away runs out over an open end by so much, mm. */
    private static final double OVER = 1;

    LevelDisc {
        infeeds = List.copyOf(infeeds);
    }

    /** In ways past of equal infeed, none wider than {@code pass}. */
    static LevelDisc of(double radius, double sunk, double pass) {
        int count = (int) Math.min(1000, Math.max(1, Math.ceil(sunk / Math.max(pass, 0.01) - 1e-9)));
        List<Double> infeeds = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            infeeds.add(sunk * i / count);
        }
        return new LevelDisc(radius, sunk, infeeds);
    }

    /** From where the rim first touches the edge of the side to where the middle of the disc is over it. */
    double arc() {
        double in = Math.min(sunk, radius);
        return Math.sqrt(in * (2 * radius - in));
    }

    /** Past the side from end to end. */
    Milled past(double from, double to) {
        double out = arc() + SlotWay.CLEAR;
        List<Lane> lanes = infeeds.stream()
                .map(in -> Lane.straight(new Point2(from - out, in - radius), new Point2(to + out, in - radius), false))
                .toList();
        Region gone = Region.rectangle(new Point2(from - OVER, -OVER), new Point2(to + OVER, sunk));
        return new Milled(lanes, gone);
    }

    /** Straight in at one place, along at full depth as far as asked, and straight out. */
    Milled sunkIn(double from, double to) {
        Point2 in = new Point2(from, sunk - radius);
        Point2 on = new Point2(to, sunk - radius);
        double clear = -radius - SlotWay.CLEAR;
        List<setwright.geometry.plane.Edge> edges = new ArrayList<>();
        edges.add(new Straight(new Point2(from, clear), in));
        if (to > from) {
            edges.add(new Straight(in, on));
        }
        Region gone = Region.of(Outline.slot(in, on, radius));
        return new Milled(List.of(new Lane(edges, false)), gone);
    }
}
