package setwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.plan.part.HeldWith;
import setwright.plan.part.SetUpStage;
import setwright.shop.Kept;
import setwright.shop.Owned;

/** All that has to be fetched before starting, by the place where it is kept. */
public record Kit(List<Shelf> shelves) {
    public Kit {
        shelves = List.copyOf(shelves);
    }

    /** One place, and what lies there. */
    public record Shelf(String place, List<Item> items) {
        public Shelf {
            items = List.copyOf(items);
        }
    }

    /** A thing to fetch; {@code remark} says what is known of how many there are, or is empty. */
    public record Item(String name, String remark) {}

    public static Kit of(Plan plan) {
        Collected collected = new Collected(plan);
        plan.drawnUp().setUps().forEach(collected::add);
        return new Kit(collected.shelves());
    }

    /** Things by place; each once, as many as the set-up that wants most of it. */
    private static final class Collected {
        private final Plan plan;
        private final Map<String, Set<Item>> byPlace = new TreeMap<>();
        private final Map<String, HeldWith> held = new LinkedHashMap<>();

        Collected(Plan plan) {
            this.plan = plan;
        }

        void add(DrawnSetUp setUp) {
            for (HeldWith one : HeldWith.of(setUp, heights(setUp), plan.rows())) {
                if (!standsThere(one)) {
                    held.merge(one.row().id() + one.which(), one, HeldWith::most);
                }
            }
            for (DrawnOperation operation : setUp.operations()) {
                plan.rows().cutter(operation.cutter().value()).ifPresent(row -> add(row.name(), row.kept()));
                plan.rows().holder(operation.holder().value()).ifPresent(row -> add(row.name(), row.kept()));
            }
        }

        private Optional<Heights> heights(DrawnSetUp setUp) {
            return plan.part().setUp(setUp.id()).map(SetUpStage::heights);
        }

        private boolean standsThere(HeldWith one) {
            return plan.job().plan().machine().clockedIn().contains(one.row().id());
        }

        private void add(String name, Kept kept) {
            String remark =
                    kept.owned() == Kept.NOT_COUNTED ? "not counted yet" : kept.owned() == 0 ? "none owned" : "";
            byPlace.computeIfAbsent(kept.place(), place -> new LinkedHashSet<>())
                    .add(new Item(name, remark));
        }

        List<Shelf> shelves() {
            for (HeldWith one : held.values()) {
                if (one.row() instanceof Owned owned) {
                    add(one.text(), owned.kept());
                }
            }
            List<Shelf> shelves = new ArrayList<>();
            byPlace.forEach((place, items) -> shelves.add(new Shelf(place, List.copyOf(items))));
            return shelves;
        }
    }
}
