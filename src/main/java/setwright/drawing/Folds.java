package setwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A scale on which empty lengths are left out, as break lines show on a drawing; each leaves a small gap. */
record Folds(List<Span> left) {
    static final Folds NONE = new Folds(List.of());

    /** What a length left out still takes on the drawing, mm. */
    static final double GAP = 3;

    Folds {
        left = List.copyOf(left);
    }

    /** Leaves out what is between two values, where that is worth a break. */
    static Folds between(double low, double high) {
        return high - low > 4 * GAP ? new Folds(List.of(new Span(low, high))) : NONE;
    }

    double of(double value) {
        double gone = 0;
        for (Span span : left) {
            if (value <= span.low()) {
                break;
            }
            double share = Math.min(1, (value - span.low()) / span.length());
            gone += share * (span.length() - GAP);
        }
        return value - gone;
    }

    /** A span in the pieces that are drawn. */
    List<Span> pieces(Span whole) {
        List<Span> pieces = new ArrayList<>();
        double from = whole.low();
        for (Span span : left) {
            if (span.high() <= from || span.low() >= whole.high()) {
                continue;
            }
            if (span.low() > from) {
                pieces.add(new Span(from, span.low()));
            }
            from = span.high();
        }
        if (from < whole.high()) {
            pieces.add(new Span(from, whole.high()));
        }
        return pieces;
    }
}
