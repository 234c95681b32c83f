package setwright.window.model;

import java.util.Locale;
import setwright.job.Job;
import setwright.quantity.UnitSystem;
import setwright.window.model.CardPlaces.Change;

/** The units in which a job is shown. */
public final class Units {
    private Units() {}

    /** The job in the other of inch and metric. */
    public static Change other(Job job) {
        UnitSystem other = switch (job.plan().units()) {
            case METRIC -> UnitSystem.INCH;
            case INCH -> UnitSystem.METRIC;
        };
        return new Change(
                "Units to " + other.name().toLowerCase(Locale.ROOT),
                job.withPlan(job.plan().withUnits(other)));
    }
}
