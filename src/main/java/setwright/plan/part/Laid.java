package setwright.plan.part;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.DrawnSetUp;
import setwright.job.Tilt;

/** How the part is laid: its side up, turned by quarter turns, then tilted; a head that is swivelled tilts no part. */
public record Laid(Side up, int quarterTurns, @Nullable Tilt tilt) {
    public static Laid of(DrawnSetUp setUp) {
        return new Laid(setUp.up().value(), setUp.quarterTurns(), setUp.tilt());
    }

    public boolean tilted() {
        return tilt != null && tilt.by() != Tilt.By.HEAD;
    }
}
