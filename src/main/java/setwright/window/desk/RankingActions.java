package setwright.window.desk;

/** What a person does with the ranking of the chosen line. */
public interface RankingActions {
    /** Opens it for the chosen line; closes it where it is open. */
    void open();

    void close();

    /**
     * Takes what has that rank, as a step that undo takes back.
     *
     * @param because why it is not the first; blank where nobody says
     */
    void take(int rank, String because);
}
