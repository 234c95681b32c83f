package setwright.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import setwright.drawing.Mark;
import setwright.geometry.plane.Point2;

/** Paints dimensions: line, arrows, and the figure on the line or, where it is too short, beside it. */
final class DimensionPainter {
    private static final double INSIDE = 22;
    private static final double OUTSIDE = 18;

    private final LetterPainter letters;
    private final Fit fit;

    DimensionPainter(LetterPainter letters, Fit fit) {
        this.letters = letters;
        this.fit = fit;
    }

    void paint(Mark.Dimension dimension) {
        Point2D a = fit.px(dimension.from().plus(dimension.aside()));
        Point2D b = fit.px(dimension.to().plus(dimension.aside()));
        lines(letters.graphics(), dimension, a, b);
        Point2D middle = new Point2D.Double((a.getX() + b.getX()) / 2, (a.getY() + b.getY()) / 2);
        if (fits(dimension.text(), a, b)) {
            letters.on(dimension.text(), middle);
        } else {
            letters.callOut(dimension.text(), middle);
        }
    }

    /** The lines alone, as in a detail. */
    void lines(Graphics2D g, Mark.Dimension dimension) {
        lines(
                g,
                dimension,
                fit.px(dimension.from().plus(dimension.aside())),
                fit.px(dimension.to().plus(dimension.aside())));
    }

    private void lines(Graphics2D g, Mark.Dimension dimension, Point2D a, Point2D b) {
        g.setColor(letters.colours().ink());
        g.setStroke(new BasicStroke(0.85f));
        extension(g, dimension.from(), a);
        extension(g, dimension.to(), b);
        if (a.distance(b) >= INSIDE) {
            g.draw(new Line2D.Double(a, b));
            Strokework.arrow(g, b, a);
            Strokework.arrow(g, a, b);
            return;
        }
        Point2D beforeA = beyond(b, a);
        Point2D behindB = beyond(a, b);
        g.draw(new Line2D.Double(beforeA, a));
        g.draw(new Line2D.Double(b, behindB));
        Strokework.arrow(g, beforeA, a);
        Strokework.arrow(g, behindB, b);
    }

    private void extension(Graphics2D g, Point2 from, Point2D to) {
        Point2D start = fit.px(from);
        if (start.distance(to) > 3) {
            g.setColor(letters.colours().pencil());
            g.draw(new Line2D.Double(start, beyond(start, to, 4)));
            g.setColor(letters.colours().ink());
        }
    }

    private static Point2D beyond(Point2D from, Point2D to) {
        return beyond(from, to, OUTSIDE);
    }

    private static Point2D beyond(Point2D from, Point2D to, double by) {
        double length = from.distance(to);
        if (length == 0) {
            return new Point2D.Double(to.getX(), to.getY() - by);
        }
        return new Point2D.Double(
                to.getX() + by * (to.getX() - from.getX()) / length,
                to.getY() + by * (to.getY() - from.getY()) / length);
    }

    /** Whether the figure leaves room for both arrows when it stands on the line. */
    private boolean fits(String text, Point2D a, Point2D b) {
        double width = letters.letters().width(text, Mark.Lettering.PLAIN);
        double height = letters.letters().height(Mark.Lettering.PLAIN);
        double x = Math.abs(a.getX() - b.getX());
        double y = Math.abs(a.getY() - b.getY());
        return x > y ? x > width + 2 * INSIDE : y > height + 2 * INSIDE;
    }
}
