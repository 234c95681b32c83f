package setwright.file.json;

import java.util.Deque;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Says in our words why a text is no JSON. */
final class Syntax {
    private static final String VALUE = "a text in double quotes, a number, true, false, { or [";

    /** What would be accepted, by words in the message of the reader. */
    private static final List<Accepted> ACCEPTED = List.of(
            new Accepted("expecting a colon", "a colon between key and value"),
            new Accepted("comma to separate Object", "a comma before the next key, or } to close the object"),
            new Accepted("comma to separate Array", "a comma before the next value, or ] to close the list"),
            new Accepted("start property name", "a key in double quotes"),
            new Accepted("expected ']'", "], which closes the list opened last"),
            new Accepted("expected '}'", "}, which closes the object opened last"),
            new Accepted("no open", "nothing more, for every bracket is closed"),
            new Accepted("unquoted character", "an escape such as \\n or \\t, or the closing quote of the text"),
            new Accepted("character escape", "one of \" \\ / b f n r t u after the backslash"),
            new Accepted("numeric value", "a number such as 12, -0.5 or 3e2, without leading zeros"),
            new Accepted("comment", VALUE + "; comments are not read"),
            new Accepted("value", VALUE),
            new Accepted("token", VALUE));

    private final String text;
    private final Deque<Place> open;

    Syntax(String text, Deque<Place> open) {
        this.text = text;
        this.open = open;
    }

    private record Accepted(String reader, String words) {}

    Problem problem(JacksonException e, Place reached, String path) {
        String reader = e.getOriginalMessage();
        if (e instanceof StreamConstraintsException) {
            return Problem.at(reached, path, Limits.words(reader));
        }
        Place at = e.getLocation() == null ? reached : TreeReader.place(e.getLocation());
        long offset = e.getLocation() == null ? -1 : e.getLocation().getCharOffset();
        if (e instanceof UnexpectedEndOfInputException || offset >= text.length()) {
            return Problem.at(at, path, endsEarly());
        }
        return Problem.at(at, path, "Found " + found(offset) + "; accepted here: " + accepted(reader) + ".");
    }

    private String endsEarly() {
        if (open.isEmpty()) {
            return "The file ends in the middle of a value; it has been cut short.";
        }
        return "The file ends here, but " + (open.size() == 1 ? "1 bracket is" : open.size() + " brackets are")
                + " still open, the innermost since " + open.element().words() + "; it has been cut short.";
    }

    private String found(long offset) {
        if (offset < 0) {
            return "what is no JSON";
        }
        int character = text.codePointAt((int) offset);
        if (Character.isISOControl(character) || Character.getType(character) == Character.FORMAT) {
            return "the character with code " + character;
        }
        return "the character " + Character.toString(character);
    }

    private static String accepted(String reader) {
        return ACCEPTED.stream()
                .filter(accepted -> reader.contains(accepted.reader()))
                .map(Accepted::words)
                .findFirst()
                .orElse("JSON");
    }
}
