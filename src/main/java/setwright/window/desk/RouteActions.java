package setwright.window.desk;

/** What a person does on the route; each of it with the set-up that is named. */
public interface RouteActions {
    void choose(String setUp);

    /** Another set-up behind it, the part turned over; it is chosen. */
    void add(String setUp);

    /** The same once more behind it; it is chosen. */
    void duplicate(String setUp);

    void delete(String setUp);

    /** The blank squared up in loads before all others; the first of them is chosen. */
    void squareUp();

    /** So many places later, or earlier. */
    void move(String setUp, int by);
}
