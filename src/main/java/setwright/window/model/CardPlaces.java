package setwright.window.model;

import java.util.Optional;
import setwright.job.Job;
import setwright.window.state.Selection;

/** The places of the unfolded line, by their keys: what typing, inking and giving back does to the job. */
public final class CardPlaces {
    private final Planned planned;
    private final Places places;

    public CardPlaces(Planned planned, Selection at) {
        this.planned = planned;
        this.places = new Places(planned, at);
    }

    /** A job after a step, with the step's name. */
    public record Change(String step, Job job) {}

    /**
     * The job with a typed text in a place.
     *
     * @throws setwright.quantity.Unreadable where the text does not say such a value
     */
    public Change type(String key, String text) {
        return place(key).type(planned, places.line(), text);
    }

    /** The job in which what the pencil has there stays; empty where it is no longer pencilled. */
    public Optional<Change> ink(String key) {
        return place(key).ink(planned, places.line());
    }

    /** The job in which the pencil may fill the place; empty where the pencil never does. */
    public Optional<Change> pencil(String key) {
        return place(key).pencil(planned, places.line());
    }

    private Place place(String key) {
        return places.find(key)
                .orElseThrow(() -> new IllegalArgumentException("The unfolded line has no field " + key + "."));
    }
}
