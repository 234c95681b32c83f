package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.job.Standing;

/**
 * One value of an unfolded line that can be changed.
 *
 * @param key as the job names it, for instance {@code stickOut}
 * @param label in the trade's words
 * @param text what stands in it: as typed, or as the pencil has it; of a choice its value
 * @param said what has to be said about it: who measured it, or why a typed text cannot be read; empty else
 * @param choices what it may be set to; empty where it is typed
 */
public record Field(String key, String label, String text, Standing standing, String said, List<Choice> choices) {
    public Field {
        choices = List.copyOf(choices);
    }

    public static Field typed(String key, String label, String text, Standing standing) {
        return new Field(key, label, text, standing, "", List.of());
    }

    public boolean isChoice() {
        return !choices.isEmpty();
    }

    public Optional<Choice> chosen() {
        return choices.stream().filter(choice -> choice.value().equals(text)).findFirst();
    }

    /** While somebody types: what was typed, with what is to be said about it. */
    public Field typing(String typed, String complaint) {
        return new Field(key, label, typed, standing, complaint, choices);
    }
}
