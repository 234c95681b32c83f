package setwright.window.desk;

import java.util.List;
import setwright.window.model.BenchModel;
import setwright.window.model.BenchPage;
import setwright.window.model.Field;
import setwright.window.model.Sought;
import setwright.window.state.BenchQuestion;

/** Bench figures, asked beside the job. */
final class BenchDesk implements BenchActions {
    private final Desk desk;
    private BenchQuestion question;

    BenchDesk(Desk desk, List<String> recent) {
        this.desk = desk;
        question = BenchQuestion.closed(recent);
    }

    BenchPage screen() {
        return question.open() ? model().page(takes()) : BenchPage.CLOSED;
    }

    private BenchModel model() {
        return new BenchModel(question, desk.session().job().plan().units(), desk.shop());
    }

    /** The fields of the unfolded operation. */
    private List<String> takes() {
        return desk.fieldsOfCard().stream().map(Field::key).toList();
    }

    private void go(BenchQuestion next) {
        boolean newest = !next.recent().equals(question.recent());
        question = next;
        if (newest) {
            desk.with(desk.settings().withFigures(next.recent()));
        } else {
            desk.refresh();
        }
    }

    @Override
    public void open() {
        go(question.opened());
    }

    @Override
    public void close() {
        go(question.closed());
    }

    @Override
    public void search(String text) {
        BenchQuestion next = question.searching(text);
        go(Sought.of(text, question.recent())
                .map(sought -> next.filled(sought.figure(), sought.typed()))
                .orElse(next));
    }

    @Override
    public void choose(String name) {
        String chosen = !name.isEmpty()
                ? name
                : model().found().stream()
                        .findFirst()
                        .map(figure -> figure.name())
                        .orElse("");
        if (!chosen.isEmpty()) {
            go(question.choosing(chosen));
        }
    }

    @Override
    public void use(String field) {
        screen().uses().stream()
                .filter(use -> use.field().equals(field))
                .findFirst()
                .ifPresent(use -> {
                    desk.card().typed(field, use.text());
                    desk.card().ink(field);
                    close();
                });
    }

    @Override
    public void typed(String key, String text) {
        go(question.with(key, text));
    }

    @Override
    public void ink(String key) {
        desk.refresh();
    }

    @Override
    public void pencil(String key) {
        go(question.with(key, ""));
    }

    @Override
    public void back(String key) {
        close();
    }

    @Override
    public void left(String key) {
        desk.refresh();
    }
}
