package setwright.window.desk;

/** What a lead does. */
public interface ReviewActions {
    /** Goes to a place of the job in the plan. */
    void place(String setUp, String operation);

    /** Puts a name under what is to be signed next. */
    void sign(String by);
}
