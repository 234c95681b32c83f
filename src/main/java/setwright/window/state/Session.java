package setwright.window.state;

import java.util.List;
import setwright.job.Job;

/**
 * The one state of the workbench; what it worked out is not part of it.
 *
 * @param openFigures keys of the worked figures whose working is shown
 * @param asked the caution that is opened at the foot
 * @param step page of the walk through, from 1; 0: the first step that is not done
 */
public record Session(
        Document document,
        Selection selection,
        Way way,
        Typing typing,
        List<String> openFigures,
        Asked asked,
        int step) {

    public Session {
        openFigures = List.copyOf(openFigures);
    }

    /**
     * The caution at the foot.
     *
     * @param caution key of the one that is looked at; empty for the worst
     * @param open whether it is opened
     */
    public record Asked(String caution, boolean open) {
        public static final Asked NOTHING = new Asked("", false);
    }

    /** A document just opened: nothing is chosen yet, the way of working stays. */
    public static Session on(Document document, Way way) {
        return new Session(document, Selection.NOTHING, way, Typing.NOTHING, List.of(), Asked.NOTHING, 0);
    }

    public Job job() {
        return document.job();
    }

    public Session with(Document changed) {
        return new Session(changed, selection, way, typing, openFigures, asked, step);
    }

    public Session with(History changed) {
        return with(document.with(changed));
    }

    /** On another line no working is open. */
    public Session with(Selection changed) {
        List<String> open = changed.equals(selection) ? openFigures : List.of();
        return new Session(document, changed, way, typing, open, asked, step);
    }

    public Session with(Way changed) {
        return new Session(document, selection, changed, typing, openFigures, asked, step);
    }

    public Session with(Typing changed) {
        return new Session(document, selection, way, changed, openFigures, asked, step);
    }

    public Session withOpenFigures(List<String> changed) {
        return new Session(document, selection, way, typing, changed, asked, step);
    }

    public Session with(Asked changed) {
        return new Session(document, selection, way, typing, openFigures, changed, step);
    }

    public Session at(int page) {
        return new Session(document, selection, way, typing, openFigures, asked, page);
    }
}
