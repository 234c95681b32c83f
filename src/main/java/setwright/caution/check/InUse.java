package setwright.caution.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.job.Drawn;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.StopAt;
import setwright.plan.Plan;
import setwright.shop.Kept;
import setwright.shop.Owned;
import setwright.shop.TableClamp;

/**
 * A thing of the shop that a plan uses.
 *
 * @param setUp where it is used first, or most at once
 * @param operation where it cuts or holds a cutter; empty where it holds the part
 * @param atOnce how many of it stand on the table at one time
 */
record InUse(String setUp, String operation, String id, int atOnce) {
    /** Each thing that the shop has a row of, once. */
    static List<InUse> all(Plan plan) {
        Map<String, InUse> found = new LinkedHashMap<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            Map<String, Integer> counted = new LinkedHashMap<>();
            holding(setUp.holding()).forEach(id -> counted.merge(id, 1, Integer::sum));
            counted.forEach((id, count) -> found.merge(id, new InUse(setUp.id(), "", id, count), InUse::more));
            setUp.operations()
                    .forEach(operation -> Stream.of(operation.cutter(), operation.holder())
                            .map(Drawn::value)
                            .forEach(id -> found.putIfAbsent(id, new InUse(setUp.id(), operation.id(), id, 1))));
        }
        return found.values().stream()
                .filter(one -> plan.rows().shop().row(one.id()).isPresent())
                .toList();
    }

    private static InUse more(InUse one, InUse other) {
        return other.atOnce > one.atOnce ? other : one;
    }

    private static List<String> holding(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> {
                DrawnVise vise = (DrawnVise) holding;
                List<String> all = new ArrayList<>();
                for (int one = 0; one < Math.max(1, vise.vises().value()); one++) {
                    all.add(vise.vise().value());
                }
                all.addAll(List.of(vise.jaws().value(), vise.parallels().value()));
                yield all;
            }
            case TABLE -> {
                DrawnTable table = (DrawnTable) holding;
                yield with(table.packing().value(), table.straps(), table.stops());
            }
            case DEVICE -> {
                DrawnDevice device = (DrawnDevice) holding;
                yield with(device.device().value(), device.straps(), device.stops());
            }
        };
    }

    private static List<String> with(String under, List<DrawnStrap> straps, List<StopAt> stops) {
        List<String> all = new ArrayList<>(List.of(under));
        straps.forEach(strap -> all.addAll(List.of(
                strap.strap().value(), strap.stud().value(), strap.washer().value())));
        stops.forEach(stop -> all.add(stop.stop()));
        return all;
    }

    /** As the shop has it today, pieces of a set counted; empty where only the job's copy speaks of it. */
    Optional<Kept> kept(Plan plan) {
        return plan.rows().today().row(id).filter(Owned.class::isInstance).map(row -> pieces((Owned) row));
    }

    /** A clamping set has a stud for every strap (common practice). */
    private Kept pieces(Owned row) {
        Kept kept = row.kept();
        if (kept.owned() <= 0) {
            return kept;
        }
        return switch (row.kind()) {
            case STRAP, EDGE_CLAMP -> new Kept(kept.place(), kept.owned() * ((TableClamp) row).pieces());
            case STUD -> new Kept(kept.place(), Math.max(kept.owned(), atOnce));
            default -> kept;
        };
    }

    Caution.Place place(String name) {
        return operation.isEmpty()
                ? Caution.Place.ofSetUp(setUp, id, name)
                : Caution.Place.worstAt(setUp, operation, id, name);
    }
}
