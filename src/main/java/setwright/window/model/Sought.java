package setwright.window.model;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.figures.Figure;
import setwright.figures.Input;

/**
 * A bench figure asked in one go: {@code tap drill M6} names it, and what follows the name stands in its blanks.
 *
 * @param typed by the keys of the blanks
 */
public record Sought(String figure, Map<String, String> typed) {
    /** Empty where all of it is a name, or none of it is. */
    public static Optional<Sought> of(String text, List<String> recent) {
        if (!FigureSearch.find(text, recent).isEmpty()) {
            return Optional.empty();
        }
        List<String> words = Arrays.stream(text.strip().split(" +")).toList();
        for (int name = words.size() - 1; name > 0; name--) {
            List<Figure> found = FigureSearch.find(String.join(" ", words.subList(0, name)), recent);
            if (!found.isEmpty()) {
                return filled(found.get(0), words.subList(name, words.size()));
            }
        }
        return Optional.empty();
    }

    private static Optional<Sought> filled(Figure figure, List<String> values) {
        List<Input> blanks = figure.inputs();
        if (values.size() > blanks.size()) {
            return Optional.empty();
        }
        Map<String, String> typed = new LinkedHashMap<>();
        for (int i = 0; i < values.size(); i++) {
            typed.put(blanks.get(i).key(), values.get(i));
        }
        return Optional.of(new Sought(figure.name(), typed));
    }
}
