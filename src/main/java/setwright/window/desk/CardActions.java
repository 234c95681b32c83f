package setwright.window.desk;

/** What a person does on a card. */
public interface CardActions {
    /** Unfolds the line, or folds it where it is the unfolded one. */
    void choose(String line);

    /** A text stands in the field, or a choice was made; the text may not be readable yet. */
    void typed(String field, String text);

    /** What stands in the field stays. */
    void ink(String field);

    /** The pencil may fill the field. */
    void pencil(String field);

    /** Rubs out what is being typed in the field; where nothing is, folds the line. */
    void back(String field);

    /** The keyboard left the field. */
    void left(String field);

    /** Shows how a figure was worked out, or closes it again. */
    void open(String figure);

    /** All that is pencilled in the unfolded operation stays. */
    void inkAll();
}
