package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A size with the least and greatest that it may be.
 *
 * @param least smallest; null where the size is general
 * @param greatest largest; null where the size is general
 */
public record Size(
        Typed<Length> nominal,
        @Nullable Typed<Length> least,
        @Nullable Typed<Length> greatest) {
    public static Size of(Typed<Length> nominal) {
        return new Size(nominal, null, null);
    }

    /** Smallest in millimetres; the nominal size where no limit is stated. */
    public double leastMm() {
        return least == null ? nominal.inside() : least.inside();
    }

    /** Largest in millimetres; the nominal size where no limit is stated. */
    public double greatestMm() {
        return greatest == null ? nominal.inside() : greatest.inside();
    }

    public boolean toleranced() {
        return least != null && greatest != null;
    }
}
