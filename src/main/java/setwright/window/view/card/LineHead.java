package setwright.window.view.card;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import setwright.window.desk.CardActions;
import setwright.window.look.Palette;
import setwright.window.look.SeveritySquare;
import setwright.window.look.Written;
import setwright.window.model.Line;

/** A folded line of two rows; Enter, space or a click unfolds it. */
final class LineHead extends JToggleButton {
    private static final long serialVersionUID = 1L;
    static final int HEIGHT = 44;
    private static final int LEFT = 12;

    private transient Line line;

    LineHead(Line line, CardActions actions) {
        this.line = line;
        setName("line." + line.key());
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setPreferredSize(new Dimension(200, HEIGHT));
        setMinimumSize(new Dimension(200, HEIGHT));
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "pressed");
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        leaveToTheCard(KeyEvent.VK_DOWN);
        leaveToTheCard(KeyEvent.VK_UP);
        addActionListener(event -> actions.choose(this.line.key()));
    }

    /** Of itself a toggle button would look for others of its group. */
    private void leaveToTheCard(int key) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key, 0), "none");
    }

    String key() {
        return line.key();
    }

    void show(Line shown, boolean unfolded) {
        line = shown;
        setSelected(unfolded);
        getAccessibleContext().setAccessibleName(shown.spoken());
        setToolTipText(null);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        Palette palette = Palette.now();
        g.setColor(isSelected() ? palette.chosen() : palette.sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(palette.rule());
        g.drawLine(0, getHeight() - 1, getWidth(), getHeight() - 1);
        if (isFocusOwner()) {
            g.setColor(palette.accent());
            g.fillRect(0, 0, 3, getHeight());
        }
        int right = getWidth() - 12;
        g.setFont(getFont());
        int pace = Written.width(this, line.pace());
        Written.line(g, line.pace(), right - pace, 18, right);
        int badge = badge(g, right);
        Written.line(g, line.with(), LEFT, 36, right - badge);
        g.setFont(getFont().deriveFont(java.awt.Font.BOLD));
        Written.line(g, line.what(), LEFT, 18, right - pace - 10);
        g.dispose();
    }

    private int badge(Graphics2D g, int right) {
        if (line.badge().count() == 0) {
            return 0;
        }
        String count = Integer.toString(line.badge().count());
        int width = g.getFontMetrics().stringWidth(count);
        g.setColor(Palette.now().ink());
        g.drawString(count, right - width, 36);
        SeveritySquare.paint(g, line.badge().square(), right - width - 5 - SeveritySquare.SIDE, 25);
        return width + SeveritySquare.SIDE + 14;
    }
}
