package setwright.file.json;

/**
 * One thing that keeps a file from being read.
 *
 * @param line counts from 1; 0 where the file as a whole is meant
 * @param column counts from 1; 0 where the file as a whole is meant
 * @param path the way to the value, for instance {@code plan/setUps[0]/operations[2]/stickOut}; empty for the whole
 * @param message what was found and what would be accepted
 */
public record Problem(int line, int column, String path, String message) {
    public static Problem at(Place place, String path, String message) {
        return new Problem(place.line(), place.column(), path, message);
    }

    /** A problem with a file as a whole. */
    public static Problem whole(String message) {
        return at(Place.NONE, "", message);
    }
}
