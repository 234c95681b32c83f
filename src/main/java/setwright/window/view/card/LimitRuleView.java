package setwright.window.view.card;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import setwright.window.look.Palette;
import setwright.window.look.Written;
import setwright.window.model.LimitRule;

/** A ruler for the choice that has the keyboard: where it stands, and where each limit would bind. */
final class LimitRuleView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LEFT = 14;
    private static final int RIGHT = 16;
    private static final int ROWS = 3;
    private static final int PIN = 7;
    private static final int APART = 8;

    private transient @Nullable LimitRule rule;

    LimitRuleView() {
        setName("limit-rule");
        setOpaque(false);
    }

    void show(@Nullable LimitRule shown) {
        rule = shown;
        setVisible(shown != null && !shown.pins().isEmpty());
        getAccessibleContext().setAccessibleName(shown == null ? "" : "Limits of the " + shown.name());
        getAccessibleContext().setAccessibleDescription(shown == null ? "" : shown.spoken());
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(getFont());
        LimitRule shown = rule;
        int rows = shown == null ? 1 : Math.min(ROWS, shown.pins().size());
        return new Dimension(100, (rows + 1) * metrics.getHeight() + PIN + 8);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        LimitRule shown = rule;
        if (shown == null) {
            return;
        }
        Graphics2D g = Written.sharp(graphics);
        g.setFont(getFont());
        new Ruler(g, shown).paint();
        g.dispose();
    }

    /** One painting. */
    private final class Ruler {
        private final Graphics2D g;
        private final LimitRule shown;
        private final FontMetrics metrics;
        private final int line;

        Ruler(Graphics2D g, LimitRule shown) {
            this.g = g;
            this.shown = shown;
            metrics = g.getFontMetrics();
            line = metrics.getHeight() + PIN;
        }

        void paint() {
            Palette palette = Palette.now();
            g.setColor(palette.rule());
            g.fillRect(LEFT, line - 1, getWidth() - LEFT - RIGHT, 3);
            int first = x(shown.pins().get(0).at());
            g.setColor(shown.broken() ? palette.stop() : palette.ink());
            g.fillRect(LEFT, line - 1, Math.min(x(shown.now()), first) - LEFT, 3);
            if (shown.broken()) {
                g.fillRect(first, line - 3, x(shown.now()) - first, 7);
            }
            pointer(palette.ink());
            pins(palette);
        }

        /** Where the choice stands, above the line. */
        private void pointer(Color color) {
            int x = x(shown.now());
            g.setColor(color);
            g.fill(new Polygon(new int[] {x - 5, x + 5, x}, new int[] {line - PIN, line - PIN, line - 1}, 3));
            String text = shown.name() + " " + shown.nowText();
            g.drawString(text, within(x - metrics.stringWidth(text) / 2, text), metrics.getAscent());
        }

        /** Where limits bind, below the line; a name that finds no row is left to the spoken words. */
        private void pins(Palette palette) {
            List<Integer> taken = new ArrayList<>();
            for (int row = 0; row < ROWS; row++) {
                taken.add(Integer.MIN_VALUE);
            }
            for (LimitRule.Pin pin : shown.pins()) {
                int x = x(pin.at());
                g.setColor(palette.ink());
                g.drawLine(x, line, x, line + PIN);
                String text = pin.name() + " " + pin.text();
                int from = within(x, text);
                int row = free(taken, from);
                if (row >= 0) {
                    g.setColor(row == 0 && taken.get(0) == Integer.MIN_VALUE ? palette.ink() : palette.pencil());
                    g.drawString(text, from, line + PIN + metrics.getAscent() + row * metrics.getHeight());
                    taken.set(row, from + metrics.stringWidth(text) + APART);
                }
            }
        }

        private int free(List<Integer> taken, int from) {
            for (int row = 0; row < ROWS; row++) {
                if (taken.get(row) <= from) {
                    return row;
                }
            }
            return -1;
        }

        private int within(int x, String text) {
            return Math.max(2, Math.min(x, getWidth() - 2 - metrics.stringWidth(text)));
        }

        private int x(double value) {
            double share = shown.end() <= 0 ? 0 : Math.min(1, value / shown.end());
            return (int) Math.round(LEFT + share * (getWidth() - LEFT - RIGHT));
        }
    }
}
