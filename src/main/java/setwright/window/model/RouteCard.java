package setwright.window.model;

/**
 * A set-up on the route.
 *
 * @param holding what holds it, and how it lies, in words
 * @param time of it on one part
 * @param badge the worst that was found in it, with its count
 */
public record RouteCard(String setUp, String title, String holding, String time, Badge badge, boolean chosen) {
    public String spoken() {
        String found = badge.text();
        return title + ", " + holding + ", " + time + (found.isEmpty() ? "" : ", " + found);
    }
}
