package setwright.window.desk;

/** What is done at the machine. */
public interface WalkActions {
    /** The step is done; at a hold point by whom, or with which reading. */
    void done(String by);

    /** One page back. */
    void back();

    /** One page on, without ticking. */
    void on();
}
