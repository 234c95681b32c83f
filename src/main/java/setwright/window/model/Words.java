package setwright.window.model;

import java.util.Locale;
import setwright.job.InWords;

/** Choices of the job in words. */
final class Words {
    private Words() {}

    /** For instance {@code quill lever}. */
    static String of(Enum<?> value) {
        return InWords.word(value);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** For instance {@code 1 hole}, {@code 4 holes}. */
    static String count(int count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }
}
