package setwright.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import setwright.drawing.Drawing;
import setwright.drawing.Fill;
import setwright.drawing.Mark;
import setwright.geometry.plane.Point2;

/** Puts a drawing on an area so that it fits; letters, line widths and hatching keep their size in px. */
public final class DrawingPainter {
    /** By which a detail is called, as ISO 128 does it. */
    private static final String LETTER = "A";

    private final Graphics2D g;
    private final Drawing drawing;
    private final Rectangle2D area;
    private final Colours colours;
    private final Fit fit;
    private final LetterPainter letters;

    private DrawingPainter(Graphics2D g, Drawing drawing, Rectangle2D area, Look look, Eye eye) {
        this.g = g;
        this.drawing = drawing;
        this.area = area;
        colours = look.colours();
        fit = Fit.of(drawing, area, eye, Letters.of(g));
        letters = new LetterPainter(g, Letters.of(g), colours, new Room(area));
    }

    /** Paints the whole drawing; its letters take the family of the graphics' font, and its size where that is larger. */
    public static void paint(Graphics2D graphics, Drawing drawing, Rectangle2D area, Look look) {
        paint(graphics, drawing, area, look, Eye.FIT);
    }

    public static void paint(Graphics2D graphics, Drawing drawing, Rectangle2D area, Look look, Eye eye) {
        lettered(graphics, drawing, area, look, eye);
    }

    /** Paints it, and says where its words stand. */
    static List<Rectangle2D> lettered(Graphics2D graphics, Drawing drawing, Rectangle2D area, Look look, Eye eye) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.clip(area);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        DrawingPainter painter = new DrawingPainter(g, drawing, area, look, eye);
        painter.paint();
        g.dispose();
        return painter.letters.room().words();
    }

    /** The scale and place at which {@link #paint} puts it, for finding what is under a pointer. */
    public static Fit fit(Graphics2D g, Drawing drawing, Rectangle2D area, Eye eye) {
        return Fit.of(drawing, area, eye, Letters.of(g));
    }

    private void paint() {
        g.setColor(colours.paper());
        g.fill(area);
        if (drawing.isEmpty()) {
            return;
        }
        new LinePainter(g, fit, colours).paint(drawing);
        DimensionPainter dimensions = new DimensionPainter(letters, fit);
        occupied();
        LadderPainter ladders = new LadderPainter(letters, fit);
        drawing.all(Mark.Ladder.class).forEach(ladder -> ladders.paint(ladder, area));
        drawing.all(Mark.Text.class).forEach(text -> letters.text(text, fit.px(text.at())));
        drawing.all(Mark.Detail.class).forEach(this::detail);
        drawing.all(Mark.Dimension.class).forEach(dimensions::paint);
        drawing.all(Mark.CallOut.class).forEach(callOut -> letters.callOut(callOut.text(), fit.px(callOut.at())));
    }

    /** Words keep away from what is drawn where they can, most of all from part, tool and packing. */
    private void occupied() {
        for (Mark.Shape shape : drawing.all(Mark.Shape.class)) {
            letters.room().drawn(fit.px(shape.box()));
            if (shape.fill() != Fill.TABLE && shape.fill() != Fill.VISE) {
                letters.room().drawn(fit.px(shape.box()));
            }
        }
    }

    private void detail(Mark.Detail detail) {
        Shape small = LinePainter.circle(fit, detail.centre(), detail.radius());
        Shape large = LinePainter.circle(fit, detail.at(), detail.radius() * detail.times());
        Graphics2D within = (Graphics2D) g.create();
        within.clip(large);
        within.setColor(colours.paper());
        within.fill(large);
        Fit larger = fit.enlarged(detail.centre(), detail.at(), detail.times());
        new LinePainter(within, larger, colours).paint(drawing);
        DimensionPainter dimensions = new DimensionPainter(letters, larger);
        drawing.all(Mark.Dimension.class).forEach(dimension -> dimensions.lines(within, dimension));
        within.dispose();
        g.setColor(colours.ink());
        g.setStroke(new BasicStroke(0.85f));
        g.draw(small);
        g.draw(large);
        letters.room().take(large.getBounds2D());
        Point2D below = fit.px(detail.at().minus(new Point2(0, detail.radius() * detail.times())));
        String text = leads(small.getBounds2D(), large.getBounds2D()) ? detail.text() : LETTER + ": " + detail.text();
        letters.text(new Mark.Text(detail.at(), Mark.Anchor.BELOW, Mark.Lettering.SMALL, text), below);
    }

    /** A short leader from circle to circle; a long one would lie across the views, so that a letter stands for it. */
    private boolean leads(Rectangle2D small, Rectangle2D large) {
        Line2D leader = between(small, large);
        if (leader.getP1().distance(leader.getP2()) < large.getWidth()) {
            g.draw(leader);
            return true;
        }
        letters.beside(LETTER, new Point2D.Double(small.getCenterX(), small.getCenterY()));
        return false;
    }

    /** The line from the edge of one circle to the edge of the other. */
    private static Line2D between(Rectangle2D small, Rectangle2D large) {
        double x = large.getCenterX() - small.getCenterX();
        double y = large.getCenterY() - small.getCenterY();
        double length = Math.max(1e-9, Math.sqrt(x * x + y * y));
        double near = small.getWidth() / 2 / length;
        double far = 1 - large.getWidth() / 2 / length;
        return new Line2D.Double(
                small.getCenterX() + near * x,
                small.getCenterY() + near * y,
                small.getCenterX() + far * x,
                small.getCenterY() + far * y);
    }
}
