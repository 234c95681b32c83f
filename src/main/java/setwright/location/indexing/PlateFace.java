package setwright.location.indexing;

import java.util.List;

/**
 * The hole circles that can be reached without turning or changing the plate.
 *
 * @param name of the plate, or of its side
 * @param circles holes of each, from the inside out
 */
public record PlateFace(String name, List<Integer> circles) {
    private static final int MOST_HOLES = 1000;

    public PlateFace {
        circles = List.copyOf(circles);
        if (circles.isEmpty() || circles.stream().anyMatch(holes -> holes < 1 || holes > MOST_HOLES)) {
            throw new IllegalArgumentException("An index plate has circles of 1 to " + MOST_HOLES + " holes, not "
                    + (circles.isEmpty() ? "none" : circles) + ".");
        }
    }
}
