package setwright.window.view.part;

import java.awt.Graphics2D;
import javax.swing.JComponent;
import setwright.job.Standing;
import setwright.window.look.Palette;
import setwright.window.look.Written;

/** Draws the standing of a field's value: dots below what is pencilled, a box around what is measured. */
public final class StandingMark {
    private static final int INSET = 6;

    private StandingMark() {}

    public static void paint(Graphics2D g, Standing standing, JComponent field, int textWidth) {
        int right = Math.min(field.getWidth() - INSET, INSET + Math.max(textWidth, 8));
        switch (standing) {
            case PENCILLED -> Written.dots(g, INSET, right, field.getHeight() - 5);
            case MEASURED -> {
                g.setColor(Palette.now().ink());
                g.drawRect(INSET - 3, 3, right - INSET + 6, field.getHeight() - 7);
            }
            case INKED -> {}
        }
        if (field.isFocusOwner()) {
            g.setColor(Palette.now().accent());
            g.drawRect(0, 0, field.getWidth() - 1, field.getHeight() - 1);
        }
    }
}
