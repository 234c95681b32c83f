package setwright.job;

import java.util.List;
import java.util.function.Function;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A plannable value of a holding on the table: where it stands in the job, and where in the drawn-up job.
 *
 * @param key as a place names it, for instance {@code s1/holding/packing}
 */
public record TableField<T>(
        String key, Function<TableHolding, Plannable<T>> ink, Function<DrawnTable, Drawn<T>> drawn) {

    public static final TableField<TableHolding.Seat> SEAT =
            new TableField<>("seat", TableHolding::seat, DrawnTable::seat);
    public static final TableField<String> PACKING =
            new TableField<>("packing", TableHolding::packing, DrawnTable::packing);
    public static final TableField<Typed<Length>> PACKING_HEIGHT =
            new TableField<>("packingHeight", TableHolding::packingHeight, DrawnTable::packingHeight);
    public static final TableField<Typed<Length>> X = new TableField<>("x", TableHolding::x, DrawnTable::x);
    public static final TableField<Typed<Length>> Y = new TableField<>("y", TableHolding::y, DrawnTable::y);

    public static List<TableField<?>> all() {
        return List.of(SEAT, PACKING, PACKING_HEIGHT, X, Y);
    }

    /** The holding with this value in the field, all others kept. */
    public TableHolding write(TableHolding holding, Plannable<T> value) {
        Change<T> change = new Change<>(this, holding, value);
        return new TableHolding(
                change.of(SEAT),
                change.of(PACKING),
                change.of(PACKING_HEIGHT),
                change.of(X),
                change.of(Y),
                holding.straps(),
                holding.stops());
    }

    private record Change<C>(TableField<C> changed, TableHolding before, Plannable<C> value) {
        /** The new value where the field is the one that changes; then both are of one type. */
        @SuppressWarnings("unchecked")
        <T> Plannable<T> of(TableField<T> field) {
            return field.equals(changed) ? (Plannable<T>) value : field.ink().apply(before);
        }
    }
}
