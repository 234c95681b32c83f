package setwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import setwright.job.DrawnHolding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Kept;

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

    /** Things by place; each once. */
    private static final class Collected {
        private final Plan plan;
        private final Map<String, Set<Item>> byPlace = new TreeMap<>();

        Collected(Plan plan) {
            this.plan = plan;
        }

        void add(DrawnSetUp setUp) {
            add(setUp.holding());
            for (DrawnOperation operation : setUp.operations()) {
                plan.rows().cutter(operation.cutter().value()).ifPresent(row -> add(row.name(), row.kept()));
                plan.rows().holder(operation.holder().value()).ifPresent(row -> add(row.name(), row.kept()));
            }
        }

        private void add(DrawnHolding holding) {
            switch (holding.kind()) {
                case VISE -> add((DrawnVise) holding);
            }
        }

        private void add(DrawnVise holding) {
            String vise = holding.vise().value();
            if (!plan.job().plan().machine().clockedIn().contains(vise)) {
                plan.rows().vise(vise).ifPresent(row -> add(row.name(), row.kept()));
            }
            if (holding.onParallels()) {
                Typed<Length> height = holding.parallelHeight().value();
                plan.rows()
                        .parallels(holding.parallels().value())
                        .ifPresent(row -> add(row.name() + ": the pair " + height.text() + " high", row.kept()));
            }
        }

        private void add(String name, Kept kept) {
            String remark =
                    kept.owned() == Kept.NOT_COUNTED ? "not counted yet" : kept.owned() == 0 ? "none owned" : "";
            byPlace.computeIfAbsent(kept.place(), place -> new LinkedHashSet<>())
                    .add(new Item(name, remark));
        }

        List<Shelf> shelves() {
            List<Shelf> shelves = new ArrayList<>();
            byPlace.forEach((place, items) -> shelves.add(new Shelf(place, List.copyOf(items))));
            return shelves;
        }
    }
}
