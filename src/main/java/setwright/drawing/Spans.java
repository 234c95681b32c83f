package setwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Spans of one line, apart from each other and in order. */
record Spans(List<Span> all) {
    static final Spans NONE = new Spans(List.of());

    /** Shorter than this counts as nothing, mm. */
    private static final double NOTHING = 1e-7;

    static Spans of(double low, double high) {
        return high - low > NOTHING ? new Spans(List.of(new Span(low, high))) : NONE;
    }

    Spans and(Spans other) {
        List<Span> sorted = new ArrayList<>(all);
        sorted.addAll(other.all);
        sorted.sort(Comparator.comparingDouble(Span::low));
        List<Span> joined = new ArrayList<>();
        for (Span span : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && span.low() <= joined.get(last).high() + NOTHING) {
                Span before = joined.get(last);
                joined.set(last, new Span(before.low(), Math.max(before.high(), span.high())));
            } else {
                joined.add(span);
            }
        }
        return new Spans(List.copyOf(joined));
    }

    Spans less(Spans other) {
        List<Span> left = all;
        for (Span gone : other.all) {
            List<Span> next = new ArrayList<>();
            for (Span span : left) {
                add(next, span.low(), Math.min(span.high(), gone.low()));
                add(next, Math.max(span.low(), gone.high()), span.high());
            }
            left = next;
        }
        return new Spans(List.copyOf(left));
    }

    private static void add(List<Span> to, double low, double high) {
        if (high - low > NOTHING) {
            to.add(new Span(low, high));
        }
    }

    /** What is in one of the two only. */
    Spans differ(Spans other) {
        return less(other).and(other.less(this));
    }

    /** From the lowest to the highest. */
    Spans whole() {
        return all.isEmpty()
                ? NONE
                : of(all.get(0).low(), all.get(all.size() - 1).high());
    }
}
