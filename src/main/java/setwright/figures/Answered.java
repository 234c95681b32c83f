package setwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/**
 * The answers to one question, with what there is to say about them.
 *
 * @param shown workings of answers that are no plain number
 */
public record Answered(List<Answer> answers, List<String> notes, List<Worked> shown) {
    private static final String CHECK_THE_UNITS = "check the units";
    private static final double SLOWEST_TURNS = 20;
    private static final double FASTEST_TURNS = 6000;
    private static final double SLOWEST_CUT = 1;
    private static final double FASTEST_CUT = 1000;

    public Answered {
        answers = List.copyOf(answers);
        notes = List.copyOf(notes);
        shown = List.copyOf(shown);
    }

    static Answered of(Answer... answers) {
        return new Answered(List.of(answers), List.of(), List.of());
    }

    Answered noting(String note) {
        return new Answered(
                answers, Stream.concat(notes.stream(), Stream.of(note)).toList(), shown);
    }

    /** With the answers of another behind these. */
    Answered with(Answered more) {
        return new Answered(
                Stream.concat(answers.stream(), more.answers.stream()).toList(), notes, shown);
    }

    /** With how an answer was worked out that is no plain number. */
    Answered showing(Worked worked) {
        return new Answered(
                answers, notes, Stream.concat(shown.stream(), Stream.of(worked)).toList());
    }

    /** How the answers were worked out, in their order. */
    public List<Worked> worked() {
        List<Worked> worked = new ArrayList<>(shown);
        for (Answer answer : answers) {
            if (answer instanceof Answer.Number number && number.worked() != null) {
                worked.add(number.worked());
            }
        }
        return List.copyOf(worked);
    }

    /** With a note where a speed lies outside of what a milling shop meets. */
    Answered checked() {
        return answers.stream().anyMatch(Answered::unusual) ? noting(CHECK_THE_UNITS) : this;
    }

    private static boolean unusual(Answer answer) {
        if (!(answer instanceof Answer.Number number)) {
            return false;
        }
        double found = number.inUnit();
        return number.unit() == Unit.RPM && outside(found, SLOWEST_TURNS, FASTEST_TURNS)
                || number.unit() == Unit.M_PER_MIN && outside(found, SLOWEST_CUT, FASTEST_CUT);
    }

    private static boolean outside(double number, double least, double greatest) {
        return number < least * (1 - 1e-12) || number > greatest * (1 + 1e-12);
    }
}
