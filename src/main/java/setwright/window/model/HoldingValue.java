package setwright.window.model;

import java.util.Optional;
import java.util.function.Function;
import setwright.job.DeviceField;
import setwright.job.DeviceHolding;
import setwright.job.Drawn;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.DrawnUp;
import setwright.job.DrawnVise;
import setwright.job.Edits;
import setwright.job.Holding;
import setwright.job.HoldingEdits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.StrapField;
import setwright.job.Strapping;
import setwright.job.TableField;
import setwright.job.TableHolding;
import setwright.job.ViseField;
import setwright.job.ViseHolding;

/**
 * A plannable value of what holds the part, whatever holds it.
 *
 * @param ink what the job as it is now has there; empty where it has nothing of the kind
 * @param drawn what was drawn up last
 * @param set puts a value there
 */
record HoldingValue<T>(
        String key,
        Function<Holding, Optional<Plannable<T>>> ink,
        Function<DrawnHolding, Drawn<T>> drawn,
        Setting<T> set) {
    /** Puts a value into a set-up of the job. */
    @FunctionalInterface
    interface Setting<T> {
        Job put(DrawnUp drawnUp, String setUp, Plannable<T> value);
    }

    static <T> HoldingValue<T> vise(ViseField<T> field) {
        return new HoldingValue<>(
                field.key(),
                ink -> ink.kind() == Holding.Kind.VISE
                        ? Optional.of(field.ink().apply((ViseHolding) ink))
                        : Optional.empty(),
                drawn -> field.drawn().apply((DrawnVise) drawn),
                (drawnUp, setUp, value) -> Edits.set(drawnUp, setUp, field, value));
    }

    static <T> HoldingValue<T> table(TableField<T> field) {
        return new HoldingValue<>(
                field.key(),
                ink -> ink.kind() == Holding.Kind.TABLE
                        ? Optional.of(field.ink().apply((TableHolding) ink))
                        : Optional.empty(),
                drawn -> field.drawn().apply((DrawnTable) drawn),
                (drawnUp, setUp, value) -> HoldingEdits.set(drawnUp, setUp, field, value));
    }

    static <T> HoldingValue<T> device(DeviceField<T> field) {
        return new HoldingValue<>(
                field.key(),
                ink -> ink.kind() == Holding.Kind.DEVICE
                        ? Optional.of(field.ink().apply((DeviceHolding) ink))
                        : Optional.empty(),
                drawn -> field.drawn().apply((DrawnDevice) drawn),
                (drawnUp, setUp, value) -> HoldingEdits.set(drawnUp, setUp, field, value));
    }

    /** A field of the strap with that id. */
    static <T> HoldingValue<T> strap(String id, StrapField<T> field) {
        return new HoldingValue<>(
                "straps/" + id + "/" + field.key(),
                ink -> strap(ink, id).map(field.ink()),
                drawn -> field.drawn().apply(strap(drawn, id)),
                (drawnUp, setUp, value) ->
                        HoldingEdits.set(drawnUp, new HoldingEdits.StrapAt(setUp, id), field, value));
    }

    private static Optional<Strapping> strap(Holding ink, String id) {
        return HoldingEdits.straps(ink).stream()
                .filter(strap -> strap.id().equals(id))
                .findFirst();
    }

    private static DrawnStrap strap(DrawnHolding drawn, String id) {
        return HoldingEdits.straps(drawn).stream()
                .filter(strap -> strap.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The plan has no strap " + id + "."));
    }

    /** What is inked is read from the job as it is now, all else from what was drawn up last. */
    Drawn<T> now(Planned planned, DrawnSetUp setUp) {
        Drawn<T> last = drawn.apply(setUp.holding());
        return planned.written(setUp.id())
                .flatMap(written -> ink.apply(written.holding()))
                .map(plannable -> Drawn.of(plannable, last::value))
                .orElse(last);
    }
}
