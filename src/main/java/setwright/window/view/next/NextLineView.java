package setwright.window.view.next;

import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import setwright.window.desk.NextActions;
import setwright.window.look.Palette;
import setwright.window.look.SeveritySquare;
import setwright.window.look.Written;
import setwright.window.model.Badge;
import setwright.window.model.Next;
import setwright.window.model.Span;

/** The next line at the foot. */
public final class NextLineView extends JButton {
    private static final long serialVersionUID = 1L;
    static final int HEIGHT = 44;

    private transient Next next = new Next(Badge.NONE, "", "", "", Next.Page.CLOSED);

    public NextLineView(NextActions actions) {
        setName("next");
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        addActionListener(event -> actions.open());
    }

    public void show(Next shown) {
        next = shown;
        setEnabled(!shown.caution().isEmpty());
        getAccessibleContext().setAccessibleName(shown.badge().text() + " " + shown.sentence() + " " + shown.hint());
        setToolTipText(shown.sentence());
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        Palette palette = Palette.now();
        g.setColor(palette.sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(isFocusOwner() ? palette.accent() : palette.ink());
        g.drawLine(0, 0, getWidth(), 0);
        if (isFocusOwner()) {
            g.drawLine(0, 1, getWidth(), 1);
        }
        g.setFont(getFont().deriveFont(14f));
        int baseline = (getHeight()
                        + g.getFontMetrics().getAscent()
                        - g.getFontMetrics().getDescent())
                / 2;
        SeveritySquare.paint(g, next.badge().square(), 12, (getHeight() - SeveritySquare.SIDE) / 2);
        int left = next.badge().square() == Badge.Square.NONE ? 12 : 12 + SeveritySquare.SIDE + 8;
        int hint = g.getFontMetrics().stringWidth(next.hint());
        int right = getWidth() - 12;
        Written.line(g, List.of(Span.plain(next.sentence())), left, baseline, right - hint - 20);
        Written.line(g, List.of(Span.faint(next.hint())), right - hint, baseline, right);
        g.dispose();
    }
}
