package setwright.paint;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** Arrows and break lines. */
final class Strokework {
    private static final double ARROW = 8;
    private static final double ARROW_HALF = 2.4;

    /** A break line waves so far to either side, and comes back after so many px. */
    private static final double WAVE = 1.8;

    private static final double WAVE_LENGTH = 13;

    private Strokework() {}

    /** A slender arrow whose tip is at {@code to}, coming from {@code from}. */
    static void arrow(Graphics2D g, Point2D from, Point2D to) {
        double length = from.distance(to);
        if (length == 0) {
            return;
        }
        double x = (to.getX() - from.getX()) / length;
        double y = (to.getY() - from.getY()) / length;
        Path2D head = new Path2D.Double();
        head.moveTo(to.getX(), to.getY());
        head.lineTo(to.getX() - ARROW * x - ARROW_HALF * y, to.getY() - ARROW * y + ARROW_HALF * x);
        head.lineTo(to.getX() - ARROW * x + ARROW_HALF * y, to.getY() - ARROW * y - ARROW_HALF * x);
        head.closePath();
        g.fill(head);
    }

    /** A freehand line as it is drawn where a length is broken off. */
    static Shape wave(Point2D from, Point2D to) {
        double length = from.distance(to);
        Path2D wave = new Path2D.Double();
        wave.moveTo(from.getX(), from.getY());
        if (length == 0) {
            return wave;
        }
        double x = (to.getX() - from.getX()) / length;
        double y = (to.getY() - from.getY()) / length;
        int count = Math.max(2, 2 * (int) Math.round(length / WAVE_LENGTH));
        for (int i = 0; i < count; i++) {
            double side = i % 2 == 0 ? 2 * WAVE : -2 * WAVE;
            double middle = (i + 0.5) * length / count;
            double end = (i + 1.0) * length / count;
            wave.quadTo(
                    from.getX() + middle * x - side * y,
                    from.getY() + middle * y + side * x,
                    from.getX() + end * x,
                    from.getY() + end * y);
        }
        return wave;
    }
}
