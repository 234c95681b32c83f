package setwright.window.model;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.job.OperationEdits;
import setwright.window.state.Selection;

/**
 * An operation that could be added to a card.
 *
 * @param text what it would be, for instance {@code Drill: 4x M8 thru}
 * @param features ids of what it would make
 */
public record Addable(Operation.Kind kind, String text, List<String> features) {
    public Addable {
        features = List.copyOf(features);
    }

    /**
     * One for every kind that can make something on the side that is up: what the chosen operation makes where it can make
     * that, else all that it can.
     */
    public static List<Addable> of(Planned planned, Selection at) {
        List<String> chosen =
                planned.operation(at.line()).map(DrawnOperation::features).orElse(List.of());
        List<Feature> up =
                planned.setUp(at.setUp()).map(setUp -> on(planned, setUp)).orElse(List.of());
        return Arrays.stream(Operation.Kind.values())
                .map(kind -> of(kind, up, chosen))
                .filter(addable -> !addable.features.isEmpty())
                .toList();
    }

    private static List<Feature> on(Planned planned, DrawnSetUp setUp) {
        return planned.job().plan().features().stream()
                .filter(feature -> feature.side() == setUp.up().value())
                .toList();
    }

    private static Addable of(Operation.Kind kind, List<Feature> up, List<String> chosen) {
        List<Feature> suiting = up.stream()
                .filter(feature -> OperationEdits.suits(kind, feature.kind()))
                .toList();
        List<Feature> same = suiting.stream()
                .filter(feature -> chosen.contains(feature.id()))
                .toList();
        List<Feature> makes = same.isEmpty() ? suiting : same;
        String what = makes.stream()
                .map(feature -> feature.note().isEmpty() ? feature.id() : feature.note())
                .collect(Collectors.joining(", "));
        return new Addable(
                kind, kind.verb() + ": " + what, makes.stream().map(Feature::id).toList());
    }
}
