package setwright.caution;

import java.util.List;
import java.util.regex.Pattern;

/** What nobody reads on a screen or a page of this program. */
public final class HouseWords {
    private static final List<String> NEVER = List.of(
            "invalid",
            "tr(y|ies|ied)",
            "please",
            "safe(ly|ty)?",
            "ok(ay)?",
            "approved",
            "valid",
            "guaranteed?",
            "error",
            "user",
            "library",
            "template",
            "strategy",
            "cycle",
            "simulat\\w+",
            "verif\\w+",
            "wizard");

    private static final Pattern FOUND =
            Pattern.compile("\\b(" + String.join("|", NEVER) + ")\\b|!", Pattern.CASE_INSENSITIVE);

    private HouseWords() {}

    /** The words of a text that do not belong there. */
    public static List<String> against(String text) {
        return FOUND.matcher(text).results().map(match -> match.group()).toList();
    }
}
