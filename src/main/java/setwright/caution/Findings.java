package setwright.caution;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import setwright.job.JobRecord.Acceptance;
import setwright.plan.NotChecked;

/**
 * Everything that the checks said about a plan.
 *
 * @param judged every caution with its acceptance, worst first
 * @param notChecked what could not be looked at, with what it needs
 * @param looked how many checks looked and came to an answer, each place counted
 * @param margins every figure that they looked at, kept or not, in the order of the checks
 */
public record Findings(List<Judged> judged, List<NotChecked> notChecked, int looked, List<Margin> margins) {
    public Findings {
        judged = List.copyOf(judged);
        notChecked = List.copyOf(notChecked);
        margins = List.copyOf(margins);
    }

    /** A caution and the acceptance that stands for it, if one does. */
    public record Judged(Caution caution, Optional<Acceptance> accepted) {
        public boolean open() {
            return accepted.isEmpty();
        }
    }

    public List<Caution> cautions() {
        return judged.stream().map(Judged::caution).toList();
    }

    /** Cautions of a severity that nobody accepted. */
    public List<Caution> open(Severity severity) {
        return of(severity, Judged::open);
    }

    /** Cautions of a severity that somebody accepted. */
    public List<Caution> accepted(Severity severity) {
        return of(severity, one -> !one.open());
    }

    private List<Caution> of(Severity severity, Predicate<Judged> wanted) {
        return judged.stream()
                .filter(wanted)
                .map(Judged::caution)
                .filter(caution -> caution.severity() == severity)
                .toList();
    }

    public Optional<Caution> find(String identity) {
        return cautions().stream()
                .filter(caution -> caution.identity().equals(identity))
                .findFirst();
    }

    public boolean any(Predicate<Caution> wanted) {
        return cautions().stream().anyMatch(wanted);
    }

    /** How many checks could not look for want of each thing, in the order in which it was first missed. */
    public Map<String, Integer> missing() {
        Map<String, Integer> counted = new LinkedHashMap<>();
        notChecked.forEach(one -> counted.merge(one.needs(), 1, Integer::sum));
        return counted;
    }
}
