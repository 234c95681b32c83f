package setwright.window.desk;

/** What a person does on a card; back folds the line. */
public interface CardActions extends FieldActions {
    /** Unfolds the line, or folds it where it is the unfolded one. */
    void choose(String line);

    /** Shows how a figure was worked out, or closes it again. */
    void open(String figure);

    /** All that is pencilled in the unfolded operation stays. */
    void inkAll();
}
