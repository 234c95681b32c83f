package setwright.window.view.card;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import setwright.window.desk.CardActions;
import setwright.window.look.Palette;
import setwright.window.look.Written;
import setwright.window.model.Figure;
import setwright.window.model.Span;

/** Name and number of a worked figure, with a thin leader between; Enter, space or a click opens its working. */
final class FigureHead extends JToggleButton {
    private static final long serialVersionUID = 1L;

    private transient Figure figure;

    FigureHead(Figure figure, CardActions actions) {
        this.figure = figure;
        setName("figure." + figure.key());
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setEnabled(figure.opens());
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "pressed");
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        leaveToTheCard(KeyEvent.VK_DOWN);
        leaveToTheCard(KeyEvent.VK_UP);
        addActionListener(event -> actions.open(this.figure.key()));
    }

    /** Of itself a toggle button would look for others of its group. */
    private void leaveToTheCard(int key) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key, 0), "none");
    }

    void show(Figure shown) {
        figure = shown;
        setSelected(!shown.working().isEmpty());
        getAccessibleContext().setAccessibleName(shown.name() + ": " + shown.printed() + " " + shown.said());
        setToolTipText(shown.opens() ? "Enter shows how it was worked out." : null);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        Palette palette = Palette.now();
        g.setFont(getFont());
        int baseline = (getHeight()
                        + g.getFontMetrics().getAscent()
                        - g.getFontMetrics().getDescent())
                / 2;
        List<Span> number =
                List.of(Span.plain(figure.printed()), Span.faint(figure.said().isEmpty() ? "" : "  " + figure.said()));
        int left = Math.max(getWidth() * 2 / 5, 120);
        Written.line(g, List.of(Span.plain(figure.name())), 14, baseline, left - 8);
        Written.line(g, number, left, baseline, getWidth());
        if (figure.opens()) {
            opener(g, baseline);
        }
        g.setColor(isFocusOwner() ? palette.accent() : palette.rule());
        g.drawLine(0, getHeight() - 1, getWidth(), getHeight() - 1);
        if (isFocusOwner()) {
            g.drawLine(0, getHeight() - 2, getWidth(), getHeight() - 2);
        }
        g.dispose();
    }

    /** A small corner: pointing right where it can be opened, down where it is open. */
    private void opener(Graphics2D g, int baseline) {
        g.setColor(Palette.now().pencil());
        int y = baseline - 5;
        if (isSelected()) {
            g.drawLine(0, y - 2, 4, y + 2);
            g.drawLine(4, y + 2, 8, y - 2);
        } else {
            g.drawLine(2, y - 4, 6, y);
            g.drawLine(6, y, 2, y + 4);
        }
    }
}
