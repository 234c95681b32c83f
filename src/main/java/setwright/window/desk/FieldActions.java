package setwright.window.desk;

/** What a person does in fields. */
public interface FieldActions {
    /** A text stands in the field, or a choice was made; the text may not be readable yet. */
    void typed(String field, String text);

    /** The value in the field so many steps larger or smaller; where it has no steps, nothing. */
    default void nudge(String field, int steps) {}

    /** What stands in the field stays. */
    void ink(String field);

    /** The pencil may fill the field. */
    void pencil(String field);

    /** Rubs out what is being typed in the field; where nothing is, leads back. */
    void back(String field);

    /** The keyboard left the field. */
    void left(String field);
}
