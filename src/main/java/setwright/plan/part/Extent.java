package setwright.plan.part;

import org.jspecify.annotations.Nullable;
import setwright.job.Tilt;

/** The box around a part as it is laid: along the table, to the column and up, mm; upright the greatest it may be. */
record Extent(double along, double across, double upright) {
    static Extent of(Lying lying, Laid laid) {
        Extent square = new Extent(
                lying.along().nominal().inside(),
                lying.across().nominal().inside(),
                lying.upright().greatestMm());
        return laid.tilted() ? square.tilted(laid.tilt()) : square;
    }

    /** The box around this box after it is tilted. */
    private Extent tilted(@Nullable Tilt tilt) {
        if (tilt == null) {
            return this;
        }
        double sine = Math.abs(StrictMath.sin(tilt.angle().inside()));
        double cosine = Math.abs(StrictMath.cos(tilt.angle().inside()));
        return switch (tilt.about()) {
            case X -> new Extent(along, across * cosine + upright * sine, across * sine + upright * cosine);
            case Y -> new Extent(along * cosine + upright * sine, across, along * sine + upright * cosine);
        };
    }
}
