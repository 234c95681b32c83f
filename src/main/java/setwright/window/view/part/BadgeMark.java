package setwright.window.view.part;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JComponent;
import setwright.window.look.SeveritySquare;
import setwright.window.look.Written;
import setwright.window.model.Badge;

/** The square of severity alone. */
public final class BadgeMark extends JComponent {
    private static final long serialVersionUID = 1L;

    private transient Badge badge = Badge.NONE;

    public BadgeMark() {
        setPreferredSize(new Dimension(SeveritySquare.SIDE, SeveritySquare.SIDE));
    }

    public void show(Badge shown) {
        badge = shown;
        setVisible(shown.square() != Badge.Square.NONE);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        SeveritySquare.paint(g, badge.square(), 0, (getHeight() - SeveritySquare.SIDE) / 2);
        g.dispose();
    }
}
