package setwright.window.model;

import java.util.Optional;
import setwright.job.Drawn;
import setwright.job.DrawnSetUp;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.Standing;
import setwright.job.ViseField;
import setwright.window.model.CardPlaces.Change;

/** A plannable value of what holds the part in a set-up; the line is the set-up. */
record HoldingPlace<T>(HoldingValue<T> value, String label, Sort<T> sort) implements Place {
    HoldingPlace(ViseField<T> field, String label, Sort<T> sort) {
        this(HoldingValue.vise(field), label, sort);
    }

    @Override
    public String key() {
        return value.key();
    }

    @Override
    public Field show(Planned planned, String setUp) {
        Drawn<T> drawn = value.now(planned, setUp(planned, setUp));
        String text = sort.text().apply(drawn.value());
        return new Field(
                key(), label, text, drawn.standing(), "", sort.choices().apply(planned, setUp));
    }

    @Override
    public Change type(Planned planned, String setUp, String text) {
        T typed = sort.read().apply(planned.reading(), text);
        Job job = value.set().put(planned.drawnUp(), setUp, Plannable.inked(typed));
        return new Change(name(planned, setUp) + " to " + said(planned, setUp, typed), job);
    }

    @Override
    public Optional<Change> ink(Planned planned, String setUp) {
        Drawn<T> drawn = value.now(planned, setUp(planned, setUp));
        if (drawn.standing() != Standing.PENCILLED) {
            return Optional.empty();
        }
        String step = name(planned, setUp) + " inked at " + said(planned, setUp, drawn.value());
        return Optional.of(new Change(step, value.set().put(planned.drawnUp(), setUp, Plannable.inked(drawn.value()))));
    }

    @Override
    public Optional<Change> pencil(Planned planned, String setUp) {
        return Optional.of(new Change(
                name(planned, setUp) + " back to the pencil",
                value.set().put(planned.drawnUp(), setUp, Plannable.pencilled())));
    }

    private String name(Planned planned, String setUp) {
        return label + " of " + setUp(planned, setUp).title();
    }

    private String said(Planned planned, String setUp, T typed) {
        String text = sort.text().apply(typed);
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
