package setwright.window.model;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Drawn;
import setwright.job.DrawnSetUp;
import setwright.job.RouteEdits;
import setwright.job.Standing;
import setwright.window.model.CardPlaces.Change;

/** Which side of the part faces the spindle; the line is the set-up. */
record SideUpPlace(Sort<Side> sort) implements Place {
    static final Place UP = new SideUpPlace(Sort.words(List.of(Side.values())));

    @Override
    public String key() {
        return "up";
    }

    @Override
    public String label() {
        return "Side up";
    }

    @Override
    public Field show(Planned planned, String setUp) {
        Drawn<Side> up = up(planned, setUp);
        return new Field(
                key(),
                label(),
                up.value().name(),
                up.standing(),
                "",
                sort.choices().apply(planned, setUp));
    }

    @Override
    public Change type(Planned planned, String setUp, String text) {
        Side side = sort.read().apply(planned.reading(), text);
        return new Change(
                name(planned, setUp) + " to " + Words.of(side), RouteEdits.turned(planned.drawnUp(), setUp, side));
    }

    @Override
    public Optional<Change> ink(Planned planned, String setUp) {
        Drawn<Side> up = up(planned, setUp);
        return up.standing() == Standing.PENCILLED
                ? Optional.of(new Change(
                        name(planned, setUp) + " inked at " + Words.of(up.value()),
                        RouteEdits.turned(planned.drawnUp(), setUp, up.value())))
                : Optional.empty();
    }

    @Override
    public Optional<Change> pencil(Planned planned, String setUp) {
        return Optional.of(new Change(
                name(planned, setUp) + " back to the pencil", RouteEdits.turnedByPencil(planned.drawnUp(), setUp)));
    }

    private String name(Planned planned, String setUp) {
        return label() + " of " + planned.setUp(setUp).map(DrawnSetUp::title).orElse(setUp);
    }

    private static Drawn<Side> up(Planned planned, String setUp) {
        return planned.setUp(setUp)
                .map(DrawnSetUp::up)
                .orElseThrow(() -> new IllegalArgumentException("The plan has no set-up " + setUp + "."));
    }
}
