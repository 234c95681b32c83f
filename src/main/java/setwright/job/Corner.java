package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A corner of an outline, from the lower left corner of the side that it is on.
 *
 * @param radius by which it is rounded; null where it is sharp
 */
public record Corner(
        Typed<Length> u, Typed<Length> v, @Nullable Typed<Length> radius) {}
