package setwright.window.desk;

/** What a person does on the quick check; what is typed there is ink at once, and Enter only goes on. */
public interface QuickActions extends FieldActions {
    /** Opens the page from anywhere; where it is open, leads back to the job. */
    void open();

    void close();
}
