package setwright.window.model;

import java.util.List;

/**
 * The page of bench figures.
 *
 * @param search what was typed to find one
 * @param found what it finds, the best first
 * @param figure the chosen one; empty while none is
 * @param sentence its question with what stands in the blanks
 * @param answers what it comes to; empty while it cannot be answered
 * @param worked how, a line each
 * @param said why there is no answer yet, or what there is to note
 * @param uses what of it the chosen operation can take over
 */
public record BenchPage(
        boolean open,
        String search,
        List<Found> found,
        String figure,
        String sentence,
        List<Field> blanks,
        List<Answer> answers,
        String worked,
        String said,
        List<Use> uses) {
    /** A figure that was found. */
    public record Found(String name, String sentence) {}

    /** One answer as it is printed. */
    public record Answer(String name, String printed) {}

    /**
     * @param field of the operation
     * @param text that it would be set to
     */
    public record Use(String field, String text) {}

    public static final BenchPage CLOSED =
            new BenchPage(false, "", List.of(), "", "", List.of(), List.of(), "", "", List.of());

    public BenchPage {
        found = List.copyOf(found);
        blanks = List.copyOf(blanks);
        answers = List.copyOf(answers);
        uses = List.copyOf(uses);
    }

    /** Question and answers as a line to be pasted elsewhere. */
    public String copied() {
        StringBuilder line = new StringBuilder(sentence);
        for (Answer answer : answers) {
            line.append(answer == answers.get(0) ? ": " : "; ")
                    .append(answer.name())
                    .append(' ')
                    .append(answer.printed());
        }
        return line.append('.').toString();
    }
}
