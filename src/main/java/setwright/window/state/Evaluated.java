package setwright.window.state;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.caution.Findings;
import setwright.caution.Remedy;
import setwright.plan.Plan;

/**
 * What was worked out of a job so far.
 *
 * @param remedies by the identity of their caution; of those that were tried already
 */
public record Evaluated(Plan plan, Findings findings, Map<String, List<Remedy>> remedies) {
    public Evaluated {
        remedies = Collections.unmodifiableMap(new LinkedHashMap<>(remedies));
    }

    public Evaluated(Plan plan, Findings findings) {
        this(plan, findings, Map.of());
    }

    public Evaluated with(String caution, List<Remedy> tried) {
        Map<String, List<Remedy>> more = new LinkedHashMap<>(remedies);
        more.put(caution, List.copyOf(tried));
        return new Evaluated(plan, findings, more);
    }
}
