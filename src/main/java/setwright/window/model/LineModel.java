package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.cutting.Limit;
import setwright.plan.cut.LooseLimit;
import setwright.plan.cut.OperationCut;
import setwright.window.state.Selection;
import setwright.window.state.Session;

/** What stands below the unfolded line: fields, what binds first, worked figures. */
final class LineModel {
    /** What the opener of the further fields is called. */
    static final String MORE = "more";

    private LineModel() {}

    static Unfolded unfolded(Planned planned, Session session) {
        Selection at = session.selection();
        Places places = new Places(planned, at);
        List<List<Field>> fields = new ArrayList<>();
        places.first().forEach(row -> fields.add(fields(row, places, planned, session)));
        boolean more = session.openFigures().contains(MORE);
        if (more && !places.more().isEmpty()) {
            places.more().forEach(row -> fields.add(fields(row, places, planned, session)));
        }
        return new Unfolded(
                fields,
                complaint(fields),
                places.more().isEmpty() ? "" : moreWords(places, more),
                limits(planned, at),
                List.of(),
                new Figures(planned, session.openFigures()).of(at));
    }

    private static String complaint(List<List<Field>> fields) {
        return fields.stream()
                .flatMap(List::stream)
                .filter(field -> !field.said().isEmpty())
                .map(field -> field.label() + ": " + field.said())
                .findFirst()
                .orElse("");
    }

    private static List<Field> fields(List<Place> row, Places places, Planned planned, Session session) {
        return row.stream()
                .map(place -> typing(place.show(planned, places.line()), session))
                .toList();
    }

    private static Field typing(Field field, Session session) {
        return session.typing().in(session.selection().line(), field.key())
                ? field.typing(session.typing().text(), session.typing().complaint())
                : field;
    }

    private static String moreWords(Places places, boolean open) {
        return open
                ? "Fewer fields"
                : places.more().stream()
                        .flatMap(List::stream)
                        .map(Place::label)
                        .distinct()
                        .collect(Collectors.joining(", "));
    }

    /** For instance {@code Binds first: tool spring 62 %, then spindle power 40 % of its limit; chatter 50 to 90 %, an estimate}. */
    private static String limits(Planned planned, Selection at) {
        return planned.plan()
                .cut()
                .operation(at.line())
                .filter(cut -> !cut.limits().isEmpty())
                .map(LineModel::limits)
                .orElse("");
    }

    private static String limits(OperationCut cut) {
        double first = cut.limits().get(0).used();
        return "Binds first: "
                + cut.limits().stream().limit(2).map(LineModel::share).collect(Collectors.joining(", then "))
                + " of its limit"
                + cut.looseLimits().stream()
                        .flatMap(loose -> mayBindFirst(loose, first).stream())
                        .collect(Collectors.joining());
    }

    private static Optional<String> mayBindFirst(LooseLimit loose, double first) {
        return Optional.ofNullable(loose.used())
                .filter(used -> used.high() > first)
                .map(used -> "; " + loose.name().words() + " " + Math.round(used.low() * 100) + " to "
                        + Math.round(used.high() * 100) + " %, an estimate");
    }

    private static String share(Limit limit) {
        return limit.name().words() + " " + Math.round(limit.used() * 100) + " %";
    }
}
