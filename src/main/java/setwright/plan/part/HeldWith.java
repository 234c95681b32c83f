package setwright.plan.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.HoldingEdits;
import setwright.job.StopAt;
import setwright.job.Tilt;
import setwright.plan.Rows;
import setwright.shop.AngleBlocks;
import setwright.shop.ShopRow;

/**
 * Something of the shop that holds the part in a set-up.
 *
 * @param row of the shop
 * @param which of it: {@code the pair 1 in high}, {@code 2 of 125 mm}; empty for the thing as a whole
 * @param pieces how many are wanted; 0 where one of it is wanted, or a set counts as one
 */
public record HeldWith(ShopRow row, String which, int pieces) {

    /** In the order in which they are put on the table; each thing once. */
    public static List<HeldWith> of(DrawnSetUp setUp, Optional<Heights> heights, Rows rows) {
        Gathered gathered = new Gathered(rows);
        switch (setUp.holding().kind()) {
            case VISE -> gathered.vise((DrawnVise) setUp.holding());
            case TABLE -> {
                DrawnTable table = (DrawnTable) setUp.holding();
                gathered.table(
                        table,
                        heights.map(found -> PackingPlaces.of(table, found, rows))
                                .orElse(List.of()));
            }
            case DEVICE -> gathered.device((DrawnDevice) setUp.holding());
        }
        List<DrawnStrap> straps = HoldingEdits.straps(setUp.holding());
        heights.ifPresent(found -> gathered.straps(StrapPlace.all(straps, found, rows)));
        Tilt tilt = setUp.tilt();
        if (tilt != null && tilt.by() == Tilt.By.ANGLE_BLOCKS) {
            gathered.angleBlocks(tilt);
        }
        return gathered.all();
    }

    private static final class Gathered {
        private final Rows rows;
        private final Map<String, HeldWith> found = new LinkedHashMap<>();

        Gathered(Rows rows) {
            this.rows = rows;
        }

        List<HeldWith> all() {
            return List.copyOf(found.values());
        }

        void vise(DrawnVise holding) {
            thing(holding.vise().value(), "");
            thing(holding.jaws().value(), "");
            if (holding.onParallels()) {
                thing(
                        holding.parallels().value(),
                        "the pair " + holding.parallelHeight().value().text() + " high");
            }
            stops(holding.stops());
        }

        void table(DrawnTable holding, List<PackingPlace> places) {
            if (!places.isEmpty()) {
                String high = holding.packingHeight().value().text() + " high";
                places.forEach(place -> piece(holding.packing().value(), high));
            }
            stops(holding.stops());
        }

        void device(DrawnDevice holding) {
            thing(holding.device().value(), "");
            for (String id : List.of(
                    holding.vise().value(),
                    holding.gear().value(),
                    holding.tail().value())) {
                thing(id, "");
            }
            stops(holding.stops());
        }

        private void stops(List<StopAt> stops) {
            stops.forEach(stop -> piece(stop.stop(), ""));
        }

        void straps(List<StrapPlace> straps) {
            List<StrapGear> gear = new ArrayList<>();
            straps.forEach(place -> place.row().ifPresent(row -> piece(row.id(), "")));
            straps.forEach(place -> StrapGear.of(place, rows).ifPresent(gear::add));
            gear.stream()
                    .filter(StrapGear::studded)
                    .forEach(one -> piece(one.studs().id(), one.length().text()));
            gear.forEach(one -> one.nut().ifPresent(nut -> piece(nut.id(), "")));
            gear.stream()
                    .filter(StrapGear::studded)
                    .forEach(one -> one.upper(rows).ifPresent(nut -> piece(nut.id(), "")));
            straps.forEach(place -> piece(place.drawn().washer().value(), ""));
            gear.forEach(one -> one.steps().ifPresent(steps -> thing(steps.id(), "")));
        }

        void angleBlocks(Tilt tilt) {
            rows.all(AngleBlocks.class).stream()
                    .filter(row -> row.kept().owned() != 0)
                    .findFirst()
                    .ifPresent(row -> thing(row.id(), "for " + tilt.angle().text()));
        }

        private void thing(String id, String which) {
            rows.shop().row(id).ifPresent(row -> found.putIfAbsent(id + which, new HeldWith(row, which, 0)));
        }

        private void piece(String id, String which) {
            rows.shop()
                    .row(id)
                    .ifPresent(row -> found.merge(
                            id + which,
                            new HeldWith(row, which, 1),
                            (before, one) -> new HeldWith(row, which, before.pieces() + 1)));
        }
    }

    /** In words: {@code Studs M12: 2 of 125 mm}. */
    public String text() {
        if (pieces == 0) {
            return row.name() + (which.isEmpty() ? "" : ": " + which);
        }
        return row.name() + ": " + pieces + (which.isEmpty() ? "" : " of " + which);
    }

    /** The more of two wants of the same thing. */
    public HeldWith most(HeldWith other) {
        return other.pieces > pieces ? other : this;
    }
}
