package setwright.job;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** The drawn-up holding of a part strapped to the table. */
public record DrawnTable(
        Drawn<TableHolding.Seat> seat,
        Drawn<String> packing,
        Drawn<Typed<Length>> packingHeight,
        Drawn<Typed<Length>> x,
        Drawn<Typed<Length>> y,
        List<DrawnStrap> straps,
        List<StopAt> stops)
        implements DrawnHolding {
    public DrawnTable {
        straps = List.copyOf(straps);
        stops = List.copyOf(stops);
    }

    @Override
    public Kind kind() {
        return Kind.TABLE;
    }
}
