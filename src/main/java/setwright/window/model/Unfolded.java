package setwright.window.model;

import java.util.List;

/**
 * What stands below the chosen line.
 *
 * @param fields rows of fields, as they stand beside each other
 * @param complaint why what is being typed cannot be read; empty where it can
 * @param more what one key further would show, or folds away again; empty where there is no more
 * @param limits what binds first, in one sentence; may be empty
 */
public record Unfolded(List<List<Field>> fields, String complaint, String more, String limits, List<Figure> figures) {
    public static final Unfolded NOTHING = new Unfolded(List.of(), "", "", "", List.of());

    public Unfolded {
        fields = fields.stream().map(List::copyOf).toList();
        figures = List.copyOf(figures);
    }
}
