package setwright.caution;

import java.util.List;
import setwright.caution.check.TapBottoms;

/** Location, order and the batch. */
final class PlaceChecks {
    static final List<Check> ALL = List.of(new TapBottoms());

    private PlaceChecks() {}
}
