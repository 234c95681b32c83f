package setwright.window.view.next;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.KeyStroke;
import setwright.window.look.Palette;
import setwright.window.look.Written;
import setwright.window.model.Next;
import setwright.window.model.Span;

/** A remedy on two rows: what it does, and what else it changes. Its number or Enter takes it. */
final class RemedyButton extends JButton {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 44;
    private static final int LEFT = 32;

    private final transient Next.Remedy remedy;

    RemedyButton(Next.Remedy remedy, IntConsumer take) {
        this.remedy = remedy;
        setName("remedy." + remedy.key());
        setBorder(BorderFactory.createEmptyBorder());
        setContentAreaFilled(false);
        setPreferredSize(new Dimension(200, HEIGHT));
        setMinimumSize(new Dimension(100, HEIGHT));
        setToolTipText(remedy.text() + " " + remedy.effect());
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "pressed");
        getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        getAccessibleContext().setAccessibleName(remedy.key() + " " + remedy.text() + ", " + remedy.effect());
        addActionListener(event -> take.accept(remedy.key()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Written.sharp(graphics);
        Palette palette = Palette.now();
        g.setColor(getModel().isRollover() || getModel().isArmed() ? palette.chosen() : palette.paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(isFocusOwner() ? palette.accent() : palette.rule());
        g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        g.setFont(getFont().deriveFont(Font.BOLD, 15f));
        Written.line(g, List.of(Span.plain(Integer.toString(remedy.key()))), 12, 27, LEFT);
        g.setFont(getFont());
        Written.line(g, List.of(Span.plain(remedy.text())), LEFT, 18, getWidth() - 8);
        Written.line(g, List.of(Span.faint(remedy.effect())), LEFT, 36, getWidth() - 8);
        g.dispose();
    }
}
