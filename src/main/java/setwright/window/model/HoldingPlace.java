package setwright.window.model;

import java.util.Optional;
import setwright.job.Drawn;
import setwright.job.DrawnSetUp;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.Standing;
import setwright.job.ViseField;
import setwright.window.model.CardPlaces.Change;

/** A plannable value of a set-up's vise holding; the line is the set-up. */
record HoldingPlace<T>(ViseField<T> field, String label, Sort<T> sort) implements Place {
    @Override
    public String key() {
        return field.key();
    }

    @Override
    public Field show(Planned planned, String setUp) {
        Drawn<T> drawn = planned.value(setUp(planned, setUp), field);
        String text = sort.text().apply(drawn.value());
        return new Field(
                key(), label, text, drawn.standing(), "", sort.choices().apply(planned, setUp));
    }

    @Override
    public Change type(Planned planned, String setUp, String text) {
        T value = sort.read().apply(planned.reading(), text);
        Job job = Edits.set(planned.drawnUp(), setUp, field, Plannable.inked(value));
        return new Change(name(planned, setUp) + " to " + said(planned, setUp, value), job);
    }

    @Override
    public Optional<Change> ink(Planned planned, String setUp) {
        Drawn<T> drawn = planned.value(setUp(planned, setUp), field);
        if (drawn.standing() != Standing.PENCILLED) {
            return Optional.empty();
        }
        String step = name(planned, setUp) + " inked at " + said(planned, setUp, drawn.value());
        return Optional.of(new Change(step, Edits.ink(planned.drawnUp(), setUp, field)));
    }

    @Override
    public Optional<Change> pencil(Planned planned, String setUp) {
        return Optional.of(new Change(
                name(planned, setUp) + " back to the pencil", Edits.pencil(planned.drawnUp(), setUp, field)));
    }

    private String name(Planned planned, String setUp) {
        return label + " of " + setUp(planned, setUp).title();
    }

    private String said(Planned planned, String setUp, T value) {
        String text = sort.text().apply(value);
        return sort.choices().apply(planned, setUp).stream()
                .filter(choice -> choice.value().equals(text))
                .map(Choice::text)
                .findFirst()
                .orElse(text);
    }

    private static DrawnSetUp setUp(Planned planned, String setUp) {
        return planned.setUp(setUp)
                .orElseThrow(() -> new IllegalArgumentException("The plan has no set-up " + setUp + "."));
    }
}
