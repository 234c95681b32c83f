package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.rigidity.stability.ZeroOrder.Lobe;

/**
 * A lobe diagram: speed to the right in rev/min, depth up in mm. Below the line it is quiet; the pass as it is set stands as
 * a point.
 */
public final class LobePlot {
    private static final double WIDTH = 160;
    private static final double HEIGHT = 90;
    private static final double POINT = 1.2;
    private static final double TICK = 1.5;
    /** Peaks higher than this many times the smallest depth are cut off. */
    private static final double HIGHEST = 6;

    private final List<Lobe> lobes;
    private final double most;

    private LobePlot(List<Lobe> lobes, double depth) {
        this.lobes = lobes;
        double least = lobes.stream().mapToDouble(Lobe::depth).min().orElse(depth);
        most = Math.max(1.2 * depth, Double.isInfinite(least) ? depth : HIGHEST * least);
    }

    /**
     * Empty without lobes.
     *
     * @param speed that is set, rad/s
     * @param depth of the pass, mm
     */
    public static Drawing of(List<Lobe> lobes, double speed, double depth) {
        return lobes.size() < 2 ? Drawing.EMPTY : new LobePlot(lobes, depth).drawing(speed, depth);
    }

    private Drawing drawing(double speed, double depth) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Shape(Fill.PART, quietGround()));
        marks.add(new Mark.Line(LineRole.VISIBLE, border()));
        marks.add(Mark.Line.of(LineRole.THIN, new Point2(0, HEIGHT), new Point2(0, 0), new Point2(WIDTH, 0)));
        for (int i = 0; i <= 4; i++) {
            speedTick(marks, i / 4.0);
            depthTick(marks, i / 4.0);
        }
        marks.add(new Mark.Round(LineRole.VISIBLE, null, at(speed, depth), POINT));
        marks.add(new Mark.CallOut(
                at(speed, depth), String.format(Locale.ROOT, "%.0f rev/min, %.2f mm", turns(speed), depth)));
        return Drawing.of(marks).and(new Drawing(List.of(), new PlanBox(0, 0, WIDTH, HEIGHT)));
    }

    private void speedTick(List<Mark> marks, double share) {
        double x = share * WIDTH;
        double speed = first() + share * (last() - first());
        marks.add(Mark.Line.of(LineRole.THIN, new Point2(x, 0), new Point2(x, -TICK)));
        marks.add(new Mark.Text(
                new Point2(x, -TICK),
                Mark.Anchor.BELOW,
                Mark.Lettering.SMALL,
                String.format(Locale.ROOT, "%.0f", turns(speed))));
    }

    private void depthTick(List<Mark> marks, double share) {
        double y = share * HEIGHT;
        marks.add(Mark.Line.of(LineRole.THIN, new Point2(0, y), new Point2(-TICK, y)));
        marks.add(new Mark.Text(
                new Point2(-TICK, y),
                Mark.Anchor.RIGHT,
                Mark.Lettering.SMALL,
                String.format(Locale.ROOT, "%.2f", share * most)));
    }

    private List<Point2> border() {
        return lobes.stream().map(lobe -> at(lobe.speed(), lobe.depth())).toList();
    }

    private List<Point2> quietGround() {
        List<Point2> ground = new ArrayList<>(border());
        ground.add(new Point2(WIDTH, 0));
        ground.add(new Point2(0, 0));
        return ground;
    }

    private Point2 at(double speed, double depth) {
        double along = (speed - first()) / (last() - first());
        return new Point2(WIDTH * Math.min(1, Math.max(0, along)), HEIGHT * Math.min(1, depth / most));
    }

    private double first() {
        return lobes.get(0).speed();
    }

    private double last() {
        return lobes.get(lobes.size() - 1).speed();
    }

    private static double turns(double speed) {
        return speed * 30 / Math.PI;
    }
}
