package setwright.window.desk;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.quantity.Unreadable;
import setwright.window.model.EntryModel;
import setwright.window.model.EntryPage;
import setwright.window.model.NoteState;
import setwright.window.model.TitleModel;
import setwright.window.state.Entry;
import setwright.window.state.Entry.TitleField;
import setwright.window.state.History;

/** Entering a job as it stands on the drawing: every note is a step of the job, drawn while it is typed. */
final class EntryDesk implements EntryActions {
    private static final String TITLE = "title.";

    private final Desk desk;
    private Entry entry = Entry.CLOSED;

    EntryDesk(Desk desk) {
        this.desk = desk;
    }

    EntryPage screen() {
        return EntryModel.of(entry, job(), desk.shop());
    }

    @Override
    public void open() {
        entry = Entry.on(Entry.Page.NOTES, features());
        desk.refresh();
    }

    @Override
    public void begin() {
        desk.use(new Opened(Fresh.document(job().plan()), desk.shop()));
        entry = Entry.on(Entry.Page.NEW_JOB, List.of());
        desk.refresh();
    }

    @Override
    public void close() {
        drop();
        entry = Entry.CLOSED;
        desk.refresh();
    }

    /** Another document: what was typed belongs to the old one. */
    void forget() {
        entry = Entry.CLOSED;
    }

    /** A step was taken back or done again: the note that was being typed is dropped with it. */
    void travelled(List<Feature> features) {
        if (entry.open()) {
            entry = Entry.on(entry.page(), features);
        }
    }

    @Override
    public void note(String text) {
        entry = entry.typing(text);
        draw();
    }

    @Override
    public void answer(String text) {
        entry = entry.answering(text);
        draw();
    }

    @Override
    public void take() {
        NoteState note = state();
        if (note.empty()) {
            close();
        } else if (note.complete()) {
            taken();
        } else if (note.offers().isEmpty()) {
            fill(entry.answer().isBlank() ? note.likelyAnswer() : entry.answer());
        }
    }

    @Override
    public void pick(int number) {
        String picked = EntryModel.picked(state().offers(), number);
        if (!picked.isEmpty()) {
            fill(picked);
        }
    }

    /** An answer that cannot be read stays in its blank, with what is wrong. */
    private void fill(String answer) {
        if (answer.isBlank()) {
            return;
        }
        List<String> all = new ArrayList<>(entry.answers());
        all.add(answer);
        Entry filled = entry.answered(all);
        NoteState then = NoteState.of(filled, job().plan());
        if (then.refusedAnswer()) {
            entry = entry.answering(answer);
            draw();
            return;
        }
        entry = filled;
        draw();
        if (then.complete()) {
            taken();
        }
    }

    @Override
    public void back() {
        if (entry.note().isEmpty()) {
            close();
            return;
        }
        boolean answering = !entry.answers().isEmpty() || !entry.answer().isEmpty();
        entry = answering ? entry.typing(entry.note()) : entry.next(entry.before());
        draw();
    }

    /** The job has what the note says, as far as it is known; where it cannot be read, what it had before. */
    private void draw() {
        NoteState note = state();
        History history = desk.session().document().history();
        Job with = note.features()
                .map(all -> job().withPlan(job().plan().withFeatures(all)))
                .orElse(null);
        desk.go(desk.session()
                .with(with == null ? history.withdrawn(place()) : history.step("Note " + entry.note(), place(), with)));
    }

    private void taken() {
        desk.go(desk.session().with(desk.session().document().history().closed()));
        entry = entry.next(features());
        desk.refresh();
    }

    private void drop() {
        desk.go(desk.session().with(desk.session().document().history().withdrawn(place())));
    }

    /** Notes never merge with each other, as each stands behind others. */
    private String place() {
        return "note/" + entry.before().size();
    }

    @Override
    public void typed(String field, String text) {
        TitleField title = field(field);
        entry = entry.with(title, text);
        try {
            Job changed = new TitleModel(job(), desk.shop()).with(title, text);
            History history = desk.session().document().history();
            desk.go(desk.session().with(history.step(title.words() + " to " + text, field, changed)));
        } catch (Unreadable why) {
            desk.refresh();
        }
    }

    @Override
    public void ink(String field) {
        left(field);
    }

    @Override
    public void pencil(String field) {
        typed(field, "");
    }

    @Override
    public void back(String field) {
        close();
    }

    @Override
    public void left(String field) {
        desk.go(desk.session().with(desk.session().document().history().closed()));
    }

    private static TitleField field(String key) {
        return TitleField.valueOf(key.substring(TITLE.length()));
    }

    private NoteState state() {
        return NoteState.of(entry, job().plan());
    }

    private List<Feature> features() {
        return job().plan().features();
    }

    private Job job() {
        return desk.session().job();
    }
}
