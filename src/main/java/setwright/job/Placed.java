package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Where the middle of a feature is on its side, u to the right and v up as one looks at it squarely.
 *
 * @param angle from u to the feature's length, anticlockwise; null: along u
 */
public record Placed(
        Pattern.Datum from,
        Typed<Length> u,
        Typed<Length> v,
        @Nullable Typed<Angle> angle) {}
