package setwright.paint;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import setwright.drawing.Mark;

/** The letters of a drawing: one family, in sizes that stay the same however large the drawing is. */
public record Letters(Font family, FontRenderContext context) {
    /** The size of plain letters of the window that {@link #SMALL_SHARE} and {@link #TITLE_SHARE} go by, px. */
    private static final double LEAST = 12;

    private static final double SMALL_SHARE = 11.0 / 12;
    private static final double TITLE_SHARE = 14.0 / 12;

    /** The letters of a graphics, at least 12 px high. */
    public static Letters of(Graphics2D g) {
        return new Letters(g.getFont(), g.getFontRenderContext());
    }

    Font font(Mark.Lettering lettering) {
        double plain = Math.max(LEAST, family.getSize2D());
        return family.deriveFont((float) (plain
                * switch (lettering) {
                    case TITLE -> TITLE_SHARE;
                    case PLAIN -> 1;
                    case SMALL -> SMALL_SHARE;
                }));
    }

    double width(String text, Mark.Lettering lettering) {
        return font(lettering).getStringBounds(text, context).getWidth();
    }

    /** From one line to the next. */
    double height(Mark.Lettering lettering) {
        LineMetrics metrics = font(lettering).getLineMetrics("Xg", context);
        return metrics.getAscent() + metrics.getDescent() + 1;
    }

    double ascent(Mark.Lettering lettering) {
        return font(lettering).getLineMetrics("Xg", context).getAscent();
    }
}
