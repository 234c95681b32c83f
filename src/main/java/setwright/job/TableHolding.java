package setwright.job;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * The part strapped to the table: straight on it, on packing or jacks, or a round part lying in a T-slot.
 *
 * @param seat what it lies on
 * @param packing id of the row that it is packed up with; {@link ViseHolding#NONE} for none
 * @param packingHeight height of the packing
 * @param x middle of the part to the middle of the table, to the right
 * @param y middle of the part to the middle of the table, to the column
 * @param straps each with its place; none: the pencil lays them
 * @param stops against which it is pushed
 */
public record TableHolding(
        Plannable<Seat> seat,
        Plannable<String> packing,
        Plannable<Typed<Length>> packingHeight,
        Plannable<Typed<Length>> x,
        Plannable<Typed<Length>> y,
        List<Strapping> straps,
        List<StopAt> stops)
        implements Holding {
    public TableHolding {
        straps = List.copyOf(straps);
        stops = List.copyOf(stops);
    }

    public static TableHolding pencilled() {
        return new TableHolding(
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                Plannable.pencilled(),
                List.of(),
                List.of());
    }

    /** What the part lies on. */
    public enum Seat {
        TABLE,
        PACKING,
        T_SLOT,
        /** On jacks under its jacking points, set to scribed lines. */
        JACKS
    }

    public TableHolding withStraps(List<Strapping> changed) {
        return new TableHolding(seat, packing, packingHeight, x, y, changed, stops);
    }

    public TableHolding withStops(List<StopAt> changed) {
        return new TableHolding(seat, packing, packingHeight, x, y, straps, changed);
    }

    @Override
    public Kind kind() {
        return Kind.TABLE;
    }
}
