package setwright.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A question as it was typed.
 *
 * @param figure the name of the figure
 * @param typed what was typed behind each key
 */
public record Question(String figure, Map<String, String> typed) {
    public Question {
        typed = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    }

    /** A line, split at blanks; a word without {@code =} belongs to the value before it. */
    public static Question of(String line) {
        List<String> words = new ArrayList<>();
        for (String word : line.strip().split("\\s+")) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        if (words.isEmpty()) {
            throw new Refusal("The line is empty; it wants the name of a figure and key=value for each input.");
        }
        return of(words.get(0), words.subList(1, words.size()));
    }

    /** The words behind the name of a figure. */
    public static Question of(String figure, List<String> words) {
        Map<String, String> typed = new LinkedHashMap<>();
        String last = "";
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals > 0) {
                last = word.substring(0, equals);
                if (typed.put(last, word.substring(equals + 1)) != null) {
                    throw Refusal.of(last, "it stands twice; one is accepted.");
                }
            } else if (last.isEmpty()) {
                throw new Refusal("'" + word + "' has no key; inputs are written key=value.");
            } else {
                typed.merge(last, word, (before, more) -> before.isEmpty() ? more : before + " " + more);
            }
        }
        return new Question(figure, typed);
    }
}
