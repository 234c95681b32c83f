package setwright.caution;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Band;

/**
 * How much there is left of something that has a limit, whether or not it is enough.
 *
 * @param of slug of the check that looked, or name of the limit
 * @param what in words, for instance {@code Tap M8, spiral point to the front parallel}
 * @param band between which ends the figure lies, in its unit; null where it is sharp
 */
public record Margin(
        String of,
        Caution.Place place,
        String what,
        Figure figure,
        @Nullable Band band) {
    public static Margin of(String slug, Caution.Place place, String what, Figure figure) {
        return new Margin(slug, place, what, figure, null);
    }

    public Margin between(Band ends) {
        return new Margin(of, place, what, figure, ends);
    }
}
