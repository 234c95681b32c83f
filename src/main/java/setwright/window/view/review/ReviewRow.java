package setwright.window.view.review;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.KeyStroke;
import setwright.window.look.Palette;
import setwright.window.look.SeveritySquare;
import setwright.window.look.Written;
import setwright.window.model.Badge;
import setwright.window.model.Review;
import setwright.window.model.Span;

/** One thing to look at; Enter goes to its place in the plan. */
final class ReviewRow extends JButton {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 30;

    private final transient Review.Item item;

    ReviewRow(Review.Item item, Runnable go) {
        this.item = item;
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setPreferredSize(new Dimension(200, HEIGHT));
        setMinimumSize(new Dimension(200, HEIGHT));
        setToolTipText(item.text() + (item.said().isEmpty() ? "" : ": " + item.said()));
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "pressed");
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        getAccessibleContext().setAccessibleName(item.badge().words() + " " + item.text() + ", " + item.said());
        if (!item.setUp().isEmpty()) {
            addActionListener(event -> go.run());
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        g.setFont(getFont());
        int baseline = (getHeight()
                        + g.getFontMetrics().getAscent()
                        - g.getFontMetrics().getDescent())
                / 2;
        SeveritySquare.paint(g, item.badge().square(), 4, (getHeight() - SeveritySquare.SIDE) / 2);
        int left = item.badge().square() == Badge.Square.NONE ? 4 : 4 + SeveritySquare.SIDE + 8;
        int said = Math.min(g.getFontMetrics().stringWidth(item.said()), getWidth() / 2);
        Written.line(g, List.of(Span.plain(item.text())), left, baseline, getWidth() - said - 24);
        Written.line(g, List.of(Span.faint(item.said())), getWidth() - said - 4, baseline, getWidth() - 2);
        g.setColor(isFocusOwner() ? Palette.now().accent() : Palette.now().rule());
        g.drawLine(0, getHeight() - 1, getWidth(), getHeight() - 1);
        g.dispose();
    }
}
