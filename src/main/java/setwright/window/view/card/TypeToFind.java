package setwright.window.view.card;

import java.util.List;
import java.util.Locale;

/**
 * Finds a choice by what is typed, letter after letter, however slowly: the first in which a word begins so. What fits
 * none begins anew.
 */
final class TypeToFind {
    private String typed = "";

    /** What was typed before is forgotten. */
    void begin() {
        typed = "";
    }

    /** Which of the choices is found with one more letter; -1 for none. */
    int index(char key, List<?> choices) {
        if (Character.isISOControl(key)) {
            return -1;
        }
        String letter = String.valueOf(key).toLowerCase(Locale.ROOT);
        int longer = first(typed + letter, choices);
        if (longer >= 0) {
            typed += letter;
            return longer;
        }
        typed = letter;
        return first(letter, choices);
    }

    private static int first(String wanted, List<?> choices) {
        for (int i = 0; i < choices.size(); i++) {
            if (begins(String.valueOf(choices.get(i)).toLowerCase(Locale.ROOT), wanted)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a word of the text begins so; blanks within it count for nothing. */
    private static boolean begins(String text, String wanted) {
        for (int at = 0; at < text.length(); at++) {
            boolean word = at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1));
            if (word && text.substring(at).replace(" ", "").startsWith(wanted.replace(" ", ""))) {
                return true;
            }
        }
        return false;
    }
}
