package setwright.window.model;

import java.util.Optional;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.Standing;
import setwright.window.model.CardPlaces.Change;

/** A plannable value of an operation; the line is the operation. */
record OperationPlace<T>(OperationField<T> field, String label, Sort<T> sort) implements Place {
    @Override
    public String key() {
        return field.key();
    }

    @Override
    public Field show(Planned planned, String line) {
        Drawn<T> drawn = planned.value(operation(planned, line), field);
        String text = sort.text().apply(drawn.value());
        return new Field(
                key(), label, text, drawn.standing(), "", sort.choices().apply(planned, line));
    }

    @Override
    public Change type(Planned planned, String line, String text) {
        T value = sort.read().apply(planned.reading(), text);
        Job job = Edits.set(planned.drawnUp(), line, field, Plannable.inked(value));
        return new Change(name(planned, line) + " to " + said(planned, line, value), job);
    }

    @Override
    public Optional<Change> ink(Planned planned, String line) {
        Drawn<T> drawn = planned.value(operation(planned, line), field);
        if (drawn.standing() != Standing.PENCILLED) {
            return Optional.empty();
        }
        String step = name(planned, line) + " inked at " + said(planned, line, drawn.value());
        return Optional.of(new Change(step, Edits.ink(planned.drawnUp(), line, field)));
    }

    @Override
    public Optional<Change> pencil(Planned planned, String line) {
        return Optional.of(
                new Change(name(planned, line) + " back to the pencil", Edits.pencil(planned.drawnUp(), line, field)));
    }

    private String name(Planned planned, String line) {
        return label + " of " + planned.words().brief(operation(planned, line));
    }

    private String said(Planned planned, String line, T value) {
        String text = sort.text().apply(value);
        return sort.choices().apply(planned, line).stream()
                .filter(choice -> choice.value().equals(text))
                .map(Choice::text)
                .findFirst()
                .orElse(text);
    }

    private static DrawnOperation operation(Planned planned, String line) {
        return planned.operation(line)
                .orElseThrow(() -> new IllegalArgumentException("The plan has no operation " + line + "."));
    }
}
