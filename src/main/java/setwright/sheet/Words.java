package setwright.sheet;

import java.util.Arrays;

/** Counts and cuts words. */
final class Words {
    private Words() {}

    /** The first words of a text, with three dots where some were left out. */
    static String atMost(int count, String text) {
        String[] words = text.strip().split("\\s+");
        return words.length <= count ? String.join(" ", words) : String.join(" ", Arrays.copyOf(words, count)) + "...";
    }
}
