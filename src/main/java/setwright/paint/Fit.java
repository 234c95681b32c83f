package setwright.paint;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import setwright.drawing.Drawing;
import setwright.drawing.Mark;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/**
 * From millimetres of a drawing to px of an area and back.
 *
 * @param scale px a millimetre
 * @param x px of the drawing's origin
 * @param y px of the drawing's origin; px grow downwards
 */
public record Fit(double scale, double x, double y) {
    private static final double MARGIN = 10;

    /** The largest scale at which the whole drawing, with the words of its ladder, is within the area. */
    public static Fit of(Drawing drawing, Rectangle2D area, Eye eye, Letters letters) {
        PlanBox extent = drawing.extent();
        double left = MARGIN
                + drawing.all(Mark.Ladder.class).stream()
                        .mapToDouble(ladder -> LadderPainter.width(ladder, letters))
                        .max()
                        .orElse(0);
        double top = MARGIN + (drawing.all(Mark.Ladder.class).isEmpty() ? 0 : letters.height(Mark.Lettering.SMALL));
        double width = Math.max(1, area.getWidth() - left - MARGIN);
        double height = Math.max(1, area.getHeight() - top - MARGIN);
        double scale = Math.min(width / Math.max(1e-6, extent.length()), height / Math.max(1e-6, extent.depth()));
        double x = left + (width - scale * extent.length()) / 2 - scale * extent.xLow();
        double y = top + (height - scale * extent.depth()) / 2 + scale * extent.yHigh();
        return new Fit(
                scale * eye.scale(),
                area.getX() + eye.scale() * x + eye.dx(),
                area.getY() + eye.scale() * y + eye.dy());
    }

    /** The same place larger: what is at {@code centre} comes to {@code at}. */
    Fit enlarged(Point2 centre, Point2 at, double times) {
        Point2D to = px(at);
        double larger = scale * times;
        return new Fit(larger, to.getX() - larger * centre.x(), to.getY() + larger * centre.y());
    }

    public Point2D px(Point2 mm) {
        return new Point2D.Double(x + scale * mm.x(), y - scale * mm.y());
    }

    public Point2 mm(Point2D px) {
        return new Point2((px.getX() - x) / scale, (y - px.getY()) / scale);
    }

    Path2D path(List<Point2> points, boolean closed) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < points.size(); i++) {
            Point2D at = px(points.get(i));
            if (i == 0) {
                path.moveTo(at.getX(), at.getY());
            } else {
                path.lineTo(at.getX(), at.getY());
            }
        }
        if (closed && !points.isEmpty()) {
            path.closePath();
        }
        return path;
    }

    Rectangle2D px(PlanBox box) {
        Point2D corner = px(new Point2(box.xLow(), box.yHigh()));
        return new Rectangle2D.Double(corner.getX(), corner.getY(), scale * box.length(), scale * box.depth());
    }
}
