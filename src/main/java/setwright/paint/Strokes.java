package setwright.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import setwright.drawing.LineRole;

/** Widths and dashes of lines, in px: thick is twice thin, as ISO 128 has it. */
final class Strokes {
    private static final float THICK = 1.7f;
    private static final float THIN = 0.85f;

    private Strokes() {}

    static BasicStroke of(LineRole role) {
        return switch (role) {
            case VISIBLE -> plain(THICK);
            case EDGE, THIN, PATH, BROKEN -> plain(THIN);
            case HIDDEN -> dashed(1.1f, 6, 3);
            case CENTRE -> dashed(THIN, 12, 3, 1.5f, 3);
            case NEIGHBOUR -> dashed(THIN, 12, 3, 1.5f, 3, 1.5f, 3);
            case CROSSING -> dashed(THIN, 2, 4);
        };
    }

    static Color colour(LineRole role, Colours colours) {
        return switch (role) {
            case VISIBLE, EDGE, HIDDEN, PATH -> colours.ink();
            case CENTRE, NEIGHBOUR, THIN, CROSSING, BROKEN -> colours.pencil();
        };
    }

    private static BasicStroke plain(float width) {
        return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed(float width, float... dashes) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
    }
}
