package setwright.plan.index;

import java.util.List;
import java.util.Optional;

/** The position table of every divided feature that is cut on an indexing device. */
public record IndexPlan(List<FeatureIndex> tables) {
    public IndexPlan {
        tables = List.copyOf(tables);
    }

    public Optional<FeatureIndex> operation(String id) {
        return tables.stream().filter(table -> table.operation().equals(id)).findFirst();
    }

    public List<FeatureIndex> setUp(String id) {
        return tables.stream().filter(table -> table.setUp().equals(id)).toList();
    }
}
