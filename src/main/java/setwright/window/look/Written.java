package setwright.window.look;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.UIManager;
import setwright.window.model.Span;

/** Writes spans on one line: pencilled with dots below, inked plain, measured in a box. */
public final class Written {
    private static final Stroke DOTS =
            new BasicStroke(1.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1f, new float[] {0.1f, 3.4f}, 0f);

    private Written() {}

    /** Sharp text as the desktop has it set. */
    public static Graphics2D sharp(java.awt.Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Object text = UIManager.get(RenderingHints.KEY_TEXT_ANTIALIASING);
        g.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, text == null ? RenderingHints.VALUE_TEXT_ANTIALIAS_ON : text);
        return g;
    }

    public static int width(JComponent on, List<Span> spans) {
        return on.getFontMetrics(on.getFont()).stringWidth(Span.text(spans));
    }

    /** Writes from x on, at most to the right edge; what does not fit ends in three dots. */
    public static void line(Graphics2D g, List<Span> spans, int x, int baseline, int right) {
        FontMetrics metrics = g.getFontMetrics();
        int at = x;
        for (Span span : spans) {
            String text = fitting(span.text(), right - at, metrics);
            if (text.isEmpty()) {
                return;
            }
            span(g, new Span(text, span.mark()), at, baseline);
            at += metrics.stringWidth(text);
        }
    }

    private static void span(Graphics2D g, Span span, int x, int baseline) {
        Palette palette = Palette.now();
        FontMetrics metrics = g.getFontMetrics();
        int width = metrics.stringWidth(span.text());
        g.setColor(span.mark() == Span.Mark.FAINT ? palette.pencil() : palette.ink());
        g.drawString(span.text(), x, baseline);
        switch (span.mark()) {
            case PENCILLED -> dots(g, x, x + width, baseline + 3);
            case MEASURED -> g.drawRect(x - 2, baseline - metrics.getAscent(), width + 3, metrics.getHeight() - 1);
            case PLAIN, FAINT, INKED -> {}
        }
    }

    /** The dotted underline of what is pencilled. */
    public static void dots(Graphics2D g, int left, int right, int y) {
        Stroke before = g.getStroke();
        g.setColor(Palette.now().pencil());
        g.setStroke(DOTS);
        g.draw(new Line2D.Double(left + 0.5, y, right - 0.5, y));
        g.setStroke(before);
    }

    private static String fitting(String text, int room, FontMetrics metrics) {
        if (metrics.stringWidth(text) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && metrics.stringWidth(text.substring(0, end) + "…") > room) {
            end--;
        }
        return end == 0 ? "" : text.substring(0, end) + "…";
    }
}
