package setwright.window.view.route;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import setwright.window.desk.RouteActions;
import setwright.window.look.Palette;
import setwright.window.look.SeveritySquare;
import setwright.window.look.Written;
import setwright.window.model.RouteCard;
import setwright.window.model.Span;
import setwright.window.view.part.Dragged;
import setwright.window.view.part.Keys;

/** One set-up on the route. */
final class RouteCardView extends JToggleButton {
    private static final long serialVersionUID = 1L;
    static final int WIDTH = 300;
    static final int HEIGHT = 72;
    private static final int PICTURE = 84;

    private transient RouteCard card;
    private final transient Picture picture;

    /** Draws the part as it stands after the set-up into the given rectangle. */
    @FunctionalInterface
    interface Picture {
        void paint(Graphics2D g, String setUp, Dimension size);
    }

    RouteCardView(RouteCard card, Picture picture, RouteActions actions) {
        this.card = card;
        this.picture = picture;
        setName("route." + card.setUp());
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setPreferredSize(new Dimension(WIDTH, HEIGHT));
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "pressed");
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        leaveToTheRoute(KeyEvent.VK_LEFT);
        leaveToTheRoute(KeyEvent.VK_RIGHT);
        addActionListener(event -> actions.choose(setUp()));
        Keys.on(this, "DELETE", () -> actions.delete(setUp()));
        Dragged.along(this, by -> actions.move(setUp(), by));
    }

    /** Of itself a toggle button would look for others of its group. */
    private void leaveToTheRoute(int key) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key, 0), "none");
    }

    String setUp() {
        return card.setUp();
    }

    void show(RouteCard shown) {
        card = shown;
        setSelected(shown.chosen());
        getAccessibleContext().setAccessibleName(shown.spoken());
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        Palette palette = Palette.now();
        g.setColor(card.chosen() ? palette.sheet() : palette.paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(isFocusOwner() ? palette.accent() : card.chosen() ? palette.ink() : palette.rule());
        g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        if (isFocusOwner()) {
            g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
        Graphics2D corner = (Graphics2D) g.create(6, 6, PICTURE - 12, getHeight() - 12);
        picture.paint(corner, card.setUp(), new Dimension(PICTURE - 12, getHeight() - 12));
        corner.dispose();
        int right = getWidth() - 10;
        g.setFont(getFont().deriveFont(Font.BOLD));
        Written.line(g, List.of(Span.plain(card.title())), PICTURE, 22, right);
        g.setFont(getFont());
        Written.line(g, List.of(Span.faint(card.holding())), PICTURE, 41, right);
        Written.line(g, List.of(Span.plain(card.time())), PICTURE, 60, right);
        badge(g, right);
        g.dispose();
    }

    private void badge(Graphics2D g, int right) {
        String words = card.badge().text();
        int width = g.getFontMetrics().stringWidth(words);
        g.setColor(Palette.now().ink());
        g.drawString(words, right - width, 60);
        SeveritySquare.paint(g, card.badge().square(), right - width - 6 - SeveritySquare.SIDE, 49);
    }
}
