package setwright.window.look;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.geom.Rectangle2D;
import setwright.window.model.Badge;

/** Draws the square of severity: filled, half on the diagonal, or outline. */
public final class SeveritySquare {
    public static final int SIDE = 13;

    private SeveritySquare() {}

    /** Draws it with its top left corner at x, y; nothing where nothing was found. */
    public static void paint(Graphics2D g, Badge.Square square, int x, int y) {
        if (square == Badge.Square.NONE) {
            return;
        }
        Palette palette = Palette.now();
        g.setColor(square == Badge.Square.FILLED ? palette.stop() : palette.ink());
        g.setStroke(new BasicStroke(1.5f));
        g.draw(new Rectangle2D.Double(x + 0.75, y + 0.75, SIDE - 1.5, SIDE - 1.5));
        if (square == Badge.Square.FILLED) {
            g.fillRect(x, y, SIDE, SIDE);
        } else if (square == Badge.Square.HALF) {
            g.fill(new Polygon(new int[] {x, x + SIDE, x}, new int[] {y, y + SIDE, y + SIDE}, 3));
        }
    }
}
