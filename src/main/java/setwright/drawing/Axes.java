package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/**
 * The axes of a plot, {@value #WIDTH} mm by {@value #HEIGHT} mm; what goes beyond an end is drawn at it.
 *
 * @param x from the left end to the right
 * @param y from the foot to the top
 */
record Axes(Span x, Span y) {
    static final double WIDTH = 160;
    static final double HEIGHT = 90;
    private static final double TICK = 1.5;
    private static final int PARTS = 4;

    /** With room for the letters at the ends. */
    static final PlanBox FRAME = new PlanBox(-24, -8, WIDTH + 30, HEIGHT + 8);

    Point2 at(double across, double up) {
        return new Point2(WIDTH * share(x, across), HEIGHT * share(y, up));
    }

    private static double share(Span span, double value) {
        return Math.max(0, Math.min(1, (value - span.low()) / (span.high() - span.low())));
    }

    /** What stands at the ticks of an axis, and what is counted along it. */
    record Scale(String name, DoubleFunction<String> number) {}

    void draw(Pen pen, Scale across, Scale up) {
        pen.line(LineRole.THIN, new Point2(0, HEIGHT), Point2.ORIGIN, new Point2(WIDTH, 0));
        for (int i = 0; i <= PARTS; i++) {
            double share = (double) i / PARTS;
            Point2 below = new Point2(share * WIDTH, 0);
            pen.line(LineRole.THIN, below, below.plus(new Point2(0, -TICK)));
            pen.add(text(below.plus(new Point2(0, -TICK)), Mark.Anchor.BELOW, across.number.apply(value(x, share))));
            Point2 beside = new Point2(0, share * HEIGHT);
            pen.line(LineRole.THIN, beside, beside.plus(new Point2(-TICK, 0)));
            pen.add(text(beside.plus(new Point2(-TICK, 0)), Mark.Anchor.RIGHT, up.number.apply(value(y, share))));
        }
        pen.add(text(new Point2(WIDTH, 0), Mark.Anchor.LEFT, across.name));
        pen.add(text(new Point2(0, HEIGHT + TICK), Mark.Anchor.ABOVE, up.name));
    }

    private static double value(Span span, double share) {
        return span.low() + share * (span.high() - span.low());
    }

    private static Mark.Text text(Point2 at, Mark.Anchor anchor, String text) {
        return new Mark.Text(at, anchor, Mark.Lettering.SMALL, text);
    }

    /** What lies below a line. */
    List<Point2> closedBelow(List<Point2> line) {
        List<Point2> ground = new ArrayList<>(line);
        ground.add(new Point2(line.get(line.size() - 1).x(), 0));
        ground.add(new Point2(line.get(0).x(), 0));
        return List.copyOf(ground);
    }
}
