package setwright.caution;

import java.util.List;
import setwright.plan.Plan;

/** Looks for one way in which a set-up goes wrong. One class, one page, one test. */
public interface Check {
    /** Trade words joined by hyphens; never renamed once released. */
    String slug();

    /** One finding for every place that it is meant for. */
    List<Finding> look(Plan plan);

    /** Changes that might mend what it found, most likely first. They are tried before anybody sees them. */
    default List<Proposal> proposals(Plan plan, Caution caution) {
        return List.of();
    }
}
