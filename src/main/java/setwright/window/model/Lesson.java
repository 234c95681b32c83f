package setwright.window.model;

import java.util.List;
import setwright.window.state.History;
import setwright.window.state.Session;

/** The lines of the first five minutes on the practice copy, one at a time as each is done. */
public enum Lesson {
    /** The next line itself says what is to be mended, and F4. */
    MEND(""),
    UNDO("Mended. Ctrl+Z takes a step back, as many as you like."),
    NUDGE("Nudge a stick-out: F2, down to a drill, Enter; in Stick-out Page up and Page down. Quill and bench follow."),
    FIGURE("Open a figure: Tab on to one, Enter. Rule, numbers put in and source stand there."),
    OWN_BLOCK("Now your own block: Ctrl+N, then size and material, then the notes as on the drawing."),
    OVER("");

    private final String words;

    Lesson(String words) {
        this.words = words;
    }

    /** What is said at the foot; empty where nothing is. */
    public String words() {
        return words;
    }

    /** The next one where this one is done, else this one. */
    public Lesson after(Session session, Planned planned) {
        return done(session, planned) ? values()[ordinal() + 1] : this;
    }

    private boolean done(Session session, Planned planned) {
        History history = session.document().history();
        return switch (this) {
            case MEND ->
                planned.upToDate() && NextModel.open(planned.findings()).isEmpty();
            case UNDO -> history.redoStep().isPresent();
            case NUDGE ->
                history.undoStep().filter(step -> step.startsWith("Stick-out")).isPresent();
            case FIGURE -> !without(session.openFigures(), "more").isEmpty();
            case OWN_BLOCK, OVER -> false;
        };
    }

    private static List<String> without(List<String> all, String one) {
        return all.stream().filter(each -> !each.equals(one)).toList();
    }
}
