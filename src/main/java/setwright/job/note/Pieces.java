package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.job.note.Piece.Kind;
import setwright.quantity.fit.Fits;

/** Cuts a note into its pieces; every letter that is no blank belongs to one. */
final class Pieces {
    private static final String FROM = "×✕✖*–—−Øø”″“’′‘μ";
    private static final String TO = "xxxx---⌀⌀\"\"\"'''µ";

    private static final String SERIES =
            "(?:\\s*-?\\s*(?:UNC|UNF|UNEF|UNS|UN)(?![a-z]))?(?:\\s*-?\\s*[123][AB](?![a-z]))?";
    private static final String FRACTION = "\\d{1,2}/\\d{1,2}";
    private static final List<Rule> RULES = List.of(
            new Rule(
                    Kind.THREAD,
                    "(?:#\\d{1,2}|\\d{1,2}[- ]" + FRACTION + "|" + FRACTION
                            + ")(?:\"|\\s*in)?\\s*-\\s*[1-9]\\d?(?![\\d./])" + SERIES),
            new Rule(Kind.THREAD, "[1-9]\\d?-[1-9]\\d?(?![\\d./])" + SERIES),
            new Rule(Kind.THREAD, "M\\s?\\d{1,3}(?:\\.\\d{1,3})?(?![\\d/])"),
            new Rule(Kind.DRILL, "(?:#|no\\.?|number)\\s?\\d{1,3}(?![\\d.])"),
            new Rule(
                    Kind.NUMBER,
                    "(?:\\d{1,4}(?:-| +)\\d{1,3}/\\d{1,3}|\\d{1,4}/\\d{1,4}|\\d{0,4} ?[⅛¼⅜½⅝¾⅞]|\\d+(?:\\.\\d+)?|\\.\\d+)"
                            + "(?:\\s*(?:millimet(?:re|er)s?|mm|inch(?:es)?|in(?!\\s+(?:line|a)(?![a-z]))|thou|degrees?|deg)(?![a-wyzµ])\\.?"
                            + "|\\s*(?:\"|''|°))?"),
            new Rule(Kind.WORD, "[a-wyzµ][a-zµ]*(?:['-][a-z]+)*"),
            new Rule(Kind.SIGN, "\\+\\s?/\\s?-|\\+-|."));
    private static final Pattern FIT = Pattern.compile("\\s*([A-Za-z]{1,2}\\d{1,2})(?![\\d.])");
    private static final Pattern CLASS =
            Pattern.compile("\\s*-?\\s*[4-8][GH](?:[4-8][GH])?(?![a-z\\d])", Pattern.CASE_INSENSITIVE);

    private Pieces() {}

    private record Rule(Kind kind, Pattern pattern) {
        Rule(Kind kind, String pattern) {
            this(kind, Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.DOTALL));
        }
    }

    static List<Piece> of(String note) {
        String plain = plain(note);
        List<Piece> found = new ArrayList<>();
        int at = 0;
        while (at < plain.length()) {
            if (plain.charAt(at) == ' ') {
                at++;
            } else {
                Piece next = next(plain, at, found);
                found.add(next);
                at = next.to();
            }
        }
        return found;
    }

    private static Piece next(String plain, int at, List<Piece> before) {
        return suffix(plain, at, before)
                .orElseGet(() -> RULES.stream()
                        .flatMap(rule -> match(rule.kind(), rule.pattern(), plain, at).stream())
                        .findFirst()
                        .orElseThrow());
    }

    /** What only stands behind something else: a tolerance class behind a size, a class of thread behind a thread. */
    private static Optional<Piece> suffix(String plain, int at, List<Piece> before) {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        if (before.get(before.size() - 1).is(Kind.NUMBER)) {
            Optional<Piece> fit = match(Kind.FIT, FIT, plain, at).filter(piece -> listed(piece.text()));
            if (fit.isPresent()) {
                return fit;
            }
        }
        boolean thread = before.stream().anyMatch(piece -> piece.is(Kind.THREAD));
        return thread ? match(Kind.CLASS, CLASS, plain, at) : Optional.empty();
    }

    private static boolean listed(String toleranceClass) {
        char first = toleranceClass.charAt(0);
        return first != 'M'
                && first != 'm'
                && first != 'R'
                && first != 'r'
                && Fits.listed().classes().contains(toleranceClass);
    }

    private static Optional<Piece> match(Kind kind, Pattern pattern, String plain, int at) {
        Matcher matcher = pattern.matcher(plain).region(at, plain.length()).useTransparentBounds(true);
        return matcher.lookingAt() ? Optional.of(piece(kind, plain, at, matcher.end())) : Optional.empty();
    }

    private static Piece piece(Kind kind, String plain, int from, int to) {
        String text = plain.substring(from, to).strip();
        boolean sign = kind == Kind.SIGN && text.equalsIgnoreCase("x");
        return new Piece(kind, kind == Kind.WORD || sign ? text.toLowerCase(Locale.ROOT) : text, from, to);
    }

    /** The same text, letter by letter, in the plain form of each. */
    private static String plain(String note) {
        StringBuilder plain = new StringBuilder(note);
        for (int i = 0; i < plain.length(); i++) {
            char letter = plain.charAt(i);
            int special = FROM.indexOf(letter);
            if (special >= 0) {
                plain.setCharAt(i, TO.charAt(special));
            } else if (Character.isWhitespace(letter) || Character.isSpaceChar(letter)) {
                plain.setCharAt(i, ' ');
            }
        }
        return plain.toString();
    }
}
