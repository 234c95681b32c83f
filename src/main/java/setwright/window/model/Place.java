package setwright.window.model;

import java.util.Optional;
import setwright.quantity.Unreadable;
import setwright.window.model.CardPlaces.Change;

/** A place in the job where a value stands that a person may change. */
interface Place {
    String key();

    /** In the trade's words. */
    String label();

    /** As it stands now, on a line of the card. */
    Field show(Planned planned, String line);

    /**
     * The job with a typed text in this place.
     *
     * @throws Unreadable where the text does not say such a value
     */
    Change type(Planned planned, String line, String text);

    /** The job in which what the pencil has here stays; empty where it is no longer pencilled. */
    Optional<Change> ink(Planned planned, String line);

    /** The job in which the pencil may fill this place; empty where the pencil never does. */
    Optional<Change> pencil(Planned planned, String line);
}
