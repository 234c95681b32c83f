package setwright.window.desk;

import java.util.Optional;
import setwright.window.model.Lesson;
import setwright.window.model.Next;
import setwright.window.model.Planned;
import setwright.window.state.Session;
import setwright.window.state.Settings;

/** What is said at the foot in the place of the next thing to do: about the last step, or a line of the first five minutes. */
final class Foot {
    private Lesson due = Lesson.MEND;
    private String said = "";

    /** Something about the last step; empty for nothing. */
    void say(String words) {
        said = words;
    }

    /** Another document: the lines begin anew where it is the practice copy. */
    void begin() {
        due = Lesson.MEND;
    }

    /** Goes on where the line that is due is done. */
    void look(Session session, Optional<Planned> planned) {
        boolean practice = Opening.isPractice(session.document());
        due = practice ? planned.map(now -> due.after(session, now)).orElse(due) : Lesson.OVER;
    }

    /** Whether a line of its own is due. */
    boolean teaches() {
        return !due.words().isEmpty();
    }

    Next.Foot said(Settings settings) {
        return said.isEmpty() && settings.lessons()
                ? new Next.Foot(due.words(), "Esc: no more of these lines")
                : new Next.Foot(said, "");
    }
}
