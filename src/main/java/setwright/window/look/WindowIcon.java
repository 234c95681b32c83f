package setwright.window.look;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The window's own picture: a hatched block between two jaws. */
public final class WindowIcon {
    private WindowIcon() {}

    /** In the sizes that desktops ask for. */
    public static List<Image> sizes() {
        return IntStream.of(16, 24, 32, 48, 64, 128).mapToObj(WindowIcon::of).toList();
    }

    private static Image of(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(size / 16.0, size / 16.0);
        Palette palette = Palette.PAPER;
        g.setColor(palette.sheet());
        g.fill(new Rectangle2D.Double(0, 0, 16, 16));
        g.setColor(palette.ink());
        g.fill(new Rectangle2D.Double(1, 6, 3, 8));
        g.fill(new Rectangle2D.Double(12, 6, 3, 8));
        g.fill(new Rectangle2D.Double(1, 13, 14, 2));
        g.setStroke(new BasicStroke(1));
        g.draw(new Rectangle2D.Double(4.5, 2.5, 7, 8));
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Line2D.Double(5, 7, 9, 3));
        g.draw(new Line2D.Double(5, 10, 11, 4));
        g.draw(new Line2D.Double(8, 10, 11, 7));
        g.dispose();
        return image;
    }
}
