package setwright.window.model;

import java.util.List;
import java.util.stream.Collectors;
import setwright.job.Standing;

/** A piece of a line of text with the way it is written. */
public record Span(String text, Mark mark) {
    /** How a piece of text is written. */
    public enum Mark {
        PLAIN,
        FAINT,
        PENCILLED,
        INKED,
        MEASURED
    }

    public static Span plain(String text) {
        return new Span(text, Mark.PLAIN);
    }

    public static Span faint(String text) {
        return new Span(text, Mark.FAINT);
    }

    public static Span value(String text, Standing standing) {
        return new Span(
                text,
                switch (standing) {
                    case PENCILLED -> Mark.PENCILLED;
                    case INKED -> Mark.INKED;
                    case MEASURED -> Mark.MEASURED;
                });
    }

    /** The text alone. */
    public static String text(List<Span> spans) {
        return spans.stream().map(Span::text).collect(Collectors.joining());
    }

    /** The text with the standing of its values in words, for those who hear the screen. */
    public static String spoken(List<Span> spans) {
        return spans.stream()
                .map(span -> switch (span.mark) {
                    case PLAIN, FAINT, INKED -> span.text;
                    case PENCILLED -> span.text + " (pencilled)";
                    case MEASURED -> span.text + " (measured)";
                })
                .collect(Collectors.joining());
    }
}
