package setwright.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import setwright.drawing.Drawing;
import setwright.drawing.Hatch;
import setwright.drawing.LineRole;
import setwright.drawing.Mark;
import setwright.geometry.plane.Point2;

/** Paints the marks that are no letters. */
final class LinePainter {
    private final Graphics2D g;
    private final Fit fit;
    private final Colours colours;

    LinePainter(Graphics2D g, Fit fit, Colours colours) {
        this.g = g;
        this.fit = fit;
        this.colours = colours;
    }

    void paint(Drawing drawing) {
        drawing.marks().forEach(this::paint);
    }

    private void paint(Mark mark) {
        switch (mark.kind()) {
            case LINE -> line((Mark.Line) mark);
            case SHAPE -> shape((Mark.Shape) mark);
            case ROUND -> round((Mark.Round) mark);
            case HATCHED -> hatched((Mark.Hatched) mark);
            case TEXT, DIMENSION, CALL_OUT, LADDER, DETAIL -> {}
        }
    }

    private void line(Mark.Line line) {
        g.setColor(Strokes.colour(line.role(), colours));
        g.setStroke(Strokes.of(line.role()));
        if (line.role() == LineRole.BROKEN) {
            for (int i = 1; i < line.points().size(); i++) {
                g.draw(Strokework.wave(
                        fit.px(line.points().get(i - 1)), fit.px(line.points().get(i))));
            }
            return;
        }
        g.draw(fit.path(line.points(), false));
        if (line.role() == LineRole.PATH && line.points().size() > 1) {
            int last = line.points().size() - 1;
            Strokework.arrow(
                    g, fit.px(line.points().get(last - 1)), fit.px(line.points().get(last)));
        }
    }

    private void shape(Mark.Shape shape) {
        Path2D path = fit.path(shape.corners(), true);
        g.setColor(colours.of(shape.fill()));
        g.fill(path);
    }

    private void round(Mark.Round round) {
        Ellipse2D circle = circle(fit, round.centre(), round.radius());
        if (round.fill() != null) {
            g.setColor(colours.of(round.fill()));
            g.fill(circle);
        }
        g.setColor(Strokes.colour(round.role(), colours));
        g.setStroke(Strokes.of(round.role()));
        g.draw(circle);
    }

    static Ellipse2D circle(Fit fit, Point2 centre, double radius) {
        Point2D middle = fit.px(centre);
        double half = fit.scale() * radius;
        return new Ellipse2D.Double(middle.getX() - half, middle.getY() - half, 2 * half, 2 * half);
    }

    private void hatched(Mark.Hatched hatched) {
        boolean touch = hatched.hatch() == Hatch.TOUCH;
        g.setColor(touch ? colours.ink() : colours.pencil());
        g.setStroke(new BasicStroke(touch ? 1.1f : 0.6f));
        Point2D origin = fit.px(new Point2(0, 0));
        g.draw(Hatching.lines(hatched.corners().stream().map(fit::px).toList(), hatched.hatch(), origin));
    }
}
