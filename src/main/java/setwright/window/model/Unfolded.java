package setwright.window.model;

import java.util.List;
import java.util.Optional;

/**
 * What stands below the chosen line.
 *
 * @param fields rows of fields, as they stand beside each other
 * @param complaint why what is being typed cannot be read; empty where it can
 * @param more what one key further would show, or folds away again; empty where there is no more
 * @param limits what binds first, in one sentence; may be empty
 * @param rules how far each choice can go, by the keys of the fields; the first where the keyboard is elsewhere
 */
public record Unfolded(
        List<List<Field>> fields,
        String complaint,
        String more,
        String limits,
        List<LimitRule> rules,
        List<Figure> figures) {
    public static final Unfolded NOTHING = new Unfolded(List.of(), "", "", "", List.of(), List.of());

    public Unfolded {
        fields = fields.stream().map(List::copyOf).toList();
        rules = List.copyOf(rules);
        figures = List.copyOf(figures);
    }

    /** The same with what was found of its limits meanwhile. */
    Unfolded ruled(List<LimitRule> found) {
        return new Unfolded(fields, complaint, more, limits, found, figures);
    }

    /** The rule of a field, else the first. */
    public Optional<LimitRule> rule(String field) {
        return rules.stream()
                .filter(rule -> rule.key().equals(field))
                .findFirst()
                .or(() -> rules.stream().findFirst());
    }
}
