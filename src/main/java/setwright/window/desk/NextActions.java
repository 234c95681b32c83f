package setwright.window.desk;

import java.util.Optional;
import setwright.window.state.Notice;

/** What a person does about the next line. */
public interface NextActions {
    /** What the caution at the foot means: what it checks, why it matters, what to do, source. */
    Optional<Notice> explanation();

    /** Opens the next caution: the first time the one at the foot, then the one after it. */
    void open();

    /** Folds it away again. */
    void close();

    /** Takes remedy 1, 2 or 3. */
    void take(int remedy);

    /** Accepts the caution. */
    void accept(String by, String reason);
}
