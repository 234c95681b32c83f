package setwright.caution.check;

import java.util.Map;
import setwright.job.FaceState;

/** What a face of a blank is out by skew and bow, so that a cut has to go that deep to clean it up. */
final class Skin {
    /** As depths over a toolroom's part, mm (common practice). */
    private static final Map<FaceState, Double> DEPTHS = Map.of(
            FaceState.SAWN, 0.5,
            FaceState.HOT_ROLLED, 0.4,
            FaceState.BRIGHT_DRAWN, 0.1,
            FaceState.GROUND, 0.02,
            FaceState.FLAME_CUT, 1.5,
            FaceState.CAST, 1.5,
            FaceState.EXTRUDED, 0.1,
            FaceState.MACHINED, 0.02);

    private Skin() {}

    static double depth(FaceState state) {
        return DEPTHS.getOrDefault(state, 0.0);
    }
}
