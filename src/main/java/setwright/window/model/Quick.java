package setwright.window.model;

import java.util.List;

/**
 * The quick check.
 *
 * @param fields the nine; empty while the page is closed
 * @param complaint why a text cannot be read; empty where all can
 * @param verdict one sentence how the cut stands
 * @param cautions what was found, worst first
 * @param notChecked what could not be looked at, with what it needs; empty where all was
 * @param assumed what the nine fields do not say and the check takes as usual
 */
public record Quick(
        List<Field> fields,
        String complaint,
        Badge badge,
        String verdict,
        List<Answer> answers,
        List<String> cautions,
        String notChecked,
        String assumed) {
    public static final Quick CLOSED = new Quick(List.of(), "", Badge.NONE, "", List.of(), List.of(), "", "");

    /** One answer: {@code Speed}, {@code 660 rev/min}, and a few words behind it. */
    public record Answer(String key, String name, String printed, String said) {}

    public Quick {
        fields = List.copyOf(fields);
        answers = List.copyOf(answers);
        cautions = List.copyOf(cautions);
    }

    public boolean open() {
        return !fields.isEmpty();
    }

    /** The same where the small job cannot be worked out. */
    public Quick unworked(String why) {
        return new Quick(
                fields, "", Badge.NONE, "This could not be worked out: " + why, List.of(), List.of(), "", assumed);
    }

    public boolean keepable() {
        return complaint.isEmpty() && !answers.isEmpty();
    }
}
