package setwright.window.desk;

import java.util.List;
import java.util.Optional;
import setwright.job.Added;
import setwright.job.DrawnOperation;
import setwright.job.Job;
import setwright.job.OperationEdits;
import setwright.window.model.Addable;
import setwright.window.model.Planned;
import setwright.window.model.StillAsked;
import setwright.window.state.Selection;

/** Changes which operations a card has, and their order. */
final class OperationDesk implements OperationActions {
    private final Desk desk;

    OperationDesk(Desk desk) {
        this.desk = desk;
    }

    @Override
    public List<Addable> addable(String line) {
        Selection at = desk.session().selection().withLine(line);
        return desk.planned().map(planned -> Addable.of(planned, at)).orElse(List.of());
    }

    @Override
    public void add(String line, Addable what) {
        desk.planned().ifPresent(planned -> {
            String setUp = desk.session().selection().setUp();
            added(
                    what.text() + " added",
                    OperationEdits.added(planned.drawnUp(), setUp, line, what.kind(), what.features()));
        });
    }

    @Override
    public void duplicate(String line) {
        at(line).ifPresent(planned ->
                added(planned.brief(line) + " duplicated", OperationEdits.duplicated(planned.drawnUp(), line)));
    }

    private void added(String name, Added added) {
        desk.step(name, added.job(), desk.session().selection().withLine(added.id()));
    }

    @Override
    public void delete(String line) {
        at(line).ifPresent(planned -> {
            Job without = OperationEdits.deleted(planned.drawnUp(), line);
            List<DrawnOperation> gone = operation(planned, line).stream().toList();
            desk.step(
                    planned.brief(line) + " deleted",
                    without,
                    desk.session().selection().withLine(""));
            desk.say(StillAsked.said(planned, without, gone));
        });
    }

    @Override
    public void move(String line, int by) {
        at(line).ifPresent(planned -> desk.step(
                planned.brief(line) + (by < 0 ? " earlier" : " later"),
                OperationEdits.moved(planned.drawnUp(), line, by),
                desk.session().selection()));
    }

    private Optional<Planned> at(String line) {
        return desk.planned().filter(planned -> operation(planned, line).isPresent());
    }

    private static Optional<DrawnOperation> operation(Planned planned, String line) {
        return planned.drawnUp().setUps().stream()
                .flatMap(setUp -> setUp.operation(line).stream())
                .findFirst();
    }
}
