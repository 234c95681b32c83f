package setwright.window.model;

import java.util.List;
import java.util.function.Predicate;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Severity;

/** Squares of severity for parts of a plan; what was accepted is not open, and notes are lines in lists, never a badge. */
final class Badges {
    private Badges() {}

    static Badge of(Findings findings, Predicate<Caution> among) {
        for (Severity severity : List.of(Severity.STOP, Severity.CAUTION)) {
            int count = (int) findings.open(severity).stream().filter(among).count();
            if (count > 0) {
                return new Badge(square(severity), count, words(severity, count));
            }
        }
        return Badge.NONE;
    }

    static Badge of(Caution caution) {
        return new Badge(square(caution.severity()), 1, caution.severity().onScreen());
    }

    static Badge.Square square(Severity severity) {
        return switch (severity) {
            case STOP -> Badge.Square.FILLED;
            case CAUTION -> Badge.Square.HALF;
            case NOTE -> Badge.Square.OUTLINE;
        };
    }

    private static String words(Severity severity, int count) {
        return switch (severity) {
            case STOP -> severity.onScreen();
            case CAUTION, NOTE -> severity.onScreen() + (count == 1 ? "" : "s");
        };
    }
}
