package setwright.file.json;

/** Texts in quotes: in full for a file, shortened for a message. */
public final class Quoted {
    private static final int SHOWN = 60;

    private Quoted() {}

    /** For a message: in quotes, control characters escaped, cut after {@value #SHOWN} characters. */
    public static String of(String text) {
        return text.length() <= SHOWN ? json(text) : json(text.substring(0, SHOWN) + "...");
    }

    /** As JSON: quotes, backslashes, control characters and halves of surrogate pairs are escaped. */
    static String json(String text) {
        StringBuilder out = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            append(out, text, i);
        }
        return out.append('"').toString();
    }

    private static void append(StringBuilder out, String text, int i) {
        char c = text.charAt(i);
        switch (c) {
            case '"', '\\' -> out.append('\\').append(c);
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> {
                if (Character.isISOControl(c) || alone(text, i)) {
                    out.append("\\u").append(Integer.toHexString(0x10000 + c), 1, 5);
                } else {
                    out.append(c);
                }
            }
        }
    }

    private static boolean alone(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }
}
