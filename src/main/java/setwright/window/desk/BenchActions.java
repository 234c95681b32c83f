package setwright.window.desk;

/** What a person does on the page of bench figures. */
public interface BenchActions extends FieldActions {
    /** Opens the page for a new question from anywhere. */
    void open();

    void close();

    /** What is looked for. */
    void search(String text);

    /** Asks this figure; the best found where the name is empty. */
    void choose(String name);

    /** The answer goes into a field of the chosen operation, inked. */
    void use(String field);
}
