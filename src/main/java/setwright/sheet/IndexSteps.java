package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Divided;
import setwright.location.indexing.Crank;
import setwright.plan.index.FeatureIndex;

/** The steps round a divided feature: one a position, or one for ten where there are many. */
record IndexSteps(Steps.Writer writer, Divided divided, FeatureIndex index) {
    private static final int ONE_BY_ONE = 40;
    private static final int TEN = 10;

    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        int count = divided.count();
        int together = count > ONE_BY_ONE ? TEN : 1;
        for (int first = 0; first < count; first += together) {
            steps.add(round(first, Math.min(count, first + together) - 1));
        }
        steps.add(last());
        return steps;
    }

    private Step round(int first, int last) {
        String numbers = first == last ? "Division " + first : "Divisions " + first + " to " + last;
        return writer.step(
                        "division-" + first,
                        Step.Kind.CUT,
                        numbers + " of " + divided.count() + ". " + at(first)
                                + (first == last ? "" : " to " + at(last).toLowerCase(java.util.Locale.ROOT)) + "."
                                + lines(first, last))
                .doing(
                        first == 0
                                ? "backlash taken up, dial and arms set to nought"
                                : "turn on the same way, never back")
                .checking(first == 0 ? "spindle locked; depth tried on a place that is cut away" : "spindle locked")
                .written();
    }

    private String at(int number) {
        Crank.Position position = index.positions().get(number);
        String turns = position.turns() == 1 ? "1 turn" : position.turns() + " turns";
        String marks = IndexBlocks.marks(index, position);
        return switch (index.scale().reading()) {
            case HOLES -> turns + ", hole " + marks;
            case DIAL -> turns + ", dial " + marks;
            case SIDES -> "Side " + marks;
        };
    }

    private String lines(int first, int last) {
        String line = IndexBlocks.line(divided, index.positions().get(first));
        if (line.isEmpty()) {
            return "";
        }
        return first == last ? " " + line + " line." : " Begins with a " + line + " line.";
    }

    private Step last() {
        return writer.step(
                        "division-" + divided.count(),
                        Step.Kind.MEASURE,
                        "Turn on to the first again, spindle off. " + at(divided.count()) + ".")
                .doing("the same way as before")
                .checking("the tool stands in the first cut: the last equals the first")
                .written();
    }
}
