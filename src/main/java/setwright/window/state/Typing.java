package setwright.window.state;

/**
 * What somebody is typing just now.
 *
 * @param field where, as {@code line/field}; empty while nobody types
 * @param complaint why the text cannot be read; empty where it can
 */
public record Typing(String field, String text, String complaint) {
    public static final Typing NOTHING = new Typing("", "", "");

    public boolean in(String line, String key) {
        return field.equals(line + "/" + key);
    }
}
