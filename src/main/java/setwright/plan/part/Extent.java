package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Point3;
import setwright.job.Job;
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

    /** The part as it lies before it is tilted, of nominal size along and across. */
    static Extent square(Job job, Laid laid) {
        return of(
                Lying.of(job.plan().blank().envelope(), laid.up(), laid.quarterTurns()),
                new Laid(laid.up(), laid.quarterTurns(), null));
    }

    /** Its corners from its middle. */
    List<Point3> corners() {
        List<Point3> found = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            found.add(new Point3(
                    (i % 2 == 0 ? -1 : 1) * along / 2,
                    (i / 2 % 2 == 0 ? -1 : 1) * across / 2,
                    (i / 4 == 0 ? -1 : 1) * upright / 2));
        }
        return found;
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
