package setwright.window.model;

/**
 * One thing that a field may be set to.
 *
 * @param value as the job names it
 * @param text as the shop calls it
 * @param against what speaks against it; empty where nothing does
 */
public record Choice(String value, String text, String against) {
    public Choice(String value, String text) {
        this(value, text, "");
    }

    @Override
    public String toString() {
        return text;
    }
}
