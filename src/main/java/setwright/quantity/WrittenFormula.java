package setwright.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The right side of a formula as written, cut into numbers, letters and signs; a product that is only written side by
 * side has its sign here.
 */
record WrittenFormula(List<Token> tokens) {
    static final List<String> FUNCTIONS =
            List.of("sin", "cos", "tan", "arcsin", "arccos", "arctan", "ln", "exp", "min", "max", "√");

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+");

    enum Kind {
        NUMBER,
        LETTER,
        FUNCTION,
        OPEN,
        CLOSE,
        SIGN,
        /** A minus that makes a number negative. */
        MINUS,
        COMMA
    }

    /** A piece of the formula; π is a number, and products and powers are written {@code ·} and {@code ^}. */
    record Token(Kind kind, String text) {}

    WrittenFormula {
        tokens = List.copyOf(tokens);
    }

    /** @throws IllegalArgumentException where the formula is not written as {@link Formula} says */
    static WrittenFormula of(Formula formula) {
        String text = formula.text();
        int equals = text.indexOf('=');
        if (equals < 0
                || !text.substring(0, equals).strip().equals(formula.result().letter())) {
            throw new IllegalArgumentException(
                    text + " has to start with " + formula.result().letter() + " =.");
        }
        List<String> words = Stream.concat(formula.inputs().stream().map(Symbol::letter), FUNCTIONS.stream())
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
        return new WrittenFormula(cut(text, plain(text.substring(equals + 1)), words));
    }

    /** The formula with something else in the place of each letter. */
    String with(Function<String, String> inPlaceOf) {
        StringBuilder written = new StringBuilder();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            written.append(
                    switch (token.kind()) {
                        case LETTER -> inPlaceOf.apply(token.text());
                        case SIGN -> token.text().equals("^") ? "^" : " " + token.text() + " ";
                        case COMMA -> ", ";
                        case FUNCTION ->
                            token.text() + (isBracket(i + 1) || token.text().equals("√") ? "" : " ");
                        case NUMBER, OPEN, CLOSE, MINUS -> token.text();
                    });
        }
        return written.toString();
    }

    private boolean isBracket(int place) {
        return place < tokens.size() && tokens.get(place).kind() == Kind.OPEN;
    }

    private static List<Token> cut(String whole, String text, List<String> words) {
        List<Token> tokens = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            if (text.charAt(at) == ' ') {
                at++;
                continue;
            }
            Token token = token(whole, text, at, words, tokens);
            if (isOperand(tokens) && startsOperand(token)) {
                tokens.add(new Token(Kind.SIGN, "·"));
            }
            tokens.add(token);
            at += token.text().length();
        }
        return tokens;
    }

    private static Token token(String whole, String text, int at, List<String> words, List<Token> before) {
        for (String word : words) {
            if (text.startsWith(word, at) && !goesOn(text, at + word.length(), word)) {
                return new Token(FUNCTIONS.contains(word) ? Kind.FUNCTION : Kind.LETTER, word);
            }
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (number.lookingAt()) {
            return new Token(Kind.NUMBER, number.group());
        }
        String sign = text.substring(at, at + 1);
        return switch (sign) {
            case "π" -> new Token(Kind.NUMBER, sign);
            case "(" -> new Token(Kind.OPEN, sign);
            case ")" -> new Token(Kind.CLOSE, sign);
            case "," -> new Token(Kind.COMMA, sign);
            case "-" -> new Token(isOperand(before) ? Kind.SIGN : Kind.MINUS, sign);
            case "+", "·", "/", "^" -> new Token(Kind.SIGN, sign);
            default ->
                throw new IllegalArgumentException(
                        whole + " has " + text.substring(at) + ", which starts with none of its letters.");
        };
    }

    /** A letter such as {@code fz} is not the start of a longer word. */
    private static boolean goesOn(String text, int end, String word) {
        return end < text.length() && isAscii(word.charAt(word.length() - 1)) && isAscii(text.charAt(end));
    }

    private static boolean isAscii(char letter) {
        return letter < 128 && Character.isLetterOrDigit(letter);
    }

    private static boolean isOperand(List<Token> before) {
        return !before.isEmpty()
                && switch (before.get(before.size() - 1).kind()) {
                    case NUMBER, LETTER, CLOSE -> true;
                    case FUNCTION, OPEN, SIGN, MINUS, COMMA -> false;
                };
    }

    private static boolean startsOperand(Token token) {
        return switch (token.kind()) {
            case NUMBER, LETTER, FUNCTION, OPEN -> true;
            case CLOSE, SIGN, MINUS, COMMA -> false;
        };
    }

    private static String plain(String text) {
        return text.replace("²", "^2")
                .replace("³", "^3")
                .replace('*', '·')
                .replace('×', '·')
                .replace('−', '-')
                .replace('[', '(')
                .replace(']', ')');
    }
}
