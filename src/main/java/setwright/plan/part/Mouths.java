package setwright.plan.part;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.quantity.Angle;
import setwright.quantity.Typed;
import setwright.reach.ThroughDepth;
import setwright.shop.ChamferMill;
import setwright.shop.Countersink;
import setwright.shop.Cutter;
import setwright.shop.SpotDrill;

/** What the mouth of a hole is opened to, and how deep, mm. */
public final class Mouths {
    /** A tapped hole without a stated mouth is countersunk this much wider than its thread (common practice). */
    private static final double THREAD_WIDER = 0.5;

    /** A spotface without a stated depth only cleans the surface, mm (common practice). */
    private static final double SPOTFACE_DEPTH = 0.5;

    /** Included angle of a countersink that the drawing does not state (common practice). */
    private static final double USUAL_ANGLE = Math.PI / 2;

    private Mouths() {}

    /** The side from which the mouth of a hole is opened. */
    public static Side side(Hole hole) {
        return Optional.ofNullable(hole.mouth())
                .flatMap(mouth -> Optional.ofNullable(mouth.from()))
                .orElse(hole.side());
    }

    /** The diameter that an operation leaves on a hole: its own where it has one, else its cutter's. */
    public static double diameter(Operation.Kind kind, Cutter cutter, Hole hole) {
        return switch (kind) {
            case BORE -> hole.size().nominal().inside();
            case COUNTERBORE, SPOTFACE, COUNTERSINK ->
                Math.min(mouth(hole), cutter.diameter().inside());
            default -> cutter.diameter().inside();
        };
    }

    /** The diameter that a mouth is asked to have. */
    public static double mouth(Hole hole) {
        Hole.Mouth mouth = hole.mouth();
        return mouth == null
                ? hole.size().nominal().inside() + THREAD_WIDER
                : mouth.diameter().nominal().inside();
    }

    /** The included angle that a countersink is asked to have. */
    public static double angle(Hole hole) {
        return Optional.ofNullable(hole.mouth())
                .flatMap(mouth -> Optional.ofNullable(mouth.angle()))
                .map(Typed<Angle>::inside)
                .orElse(USUAL_ANGLE);
    }

    /** How deep the point of a tool goes for the mouth of a hole. */
    public static double depth(Operation.Kind kind, Cutter cutter, Hole hole) {
        return kind == Operation.Kind.COUNTERSINK
                ? ThroughDepth.pointLength(diameter(kind, cutter, hole), coneAngle(cutter))
                : flat(hole.mouth());
    }

    private static double flat(Hole.@Nullable Mouth mouth) {
        return mouth == null || mouth.depth() == null
                ? SPOTFACE_DEPTH
                : mouth.depth().nominal().inside();
    }

    /** The included angle of a tool's cone; {@link #USUAL_ANGLE} where it has none. */
    public static double coneAngle(Cutter cutter) {
        return switch (cutter.form()) {
            case COUNTERSINK -> ((Countersink) cutter).includedAngle().inside();
            case SPOT_DRILL -> ((SpotDrill) cutter).pointAngle().inside();
            case CHAMFER_MILL -> ((ChamferMill) cutter).includedAngle().inside();
            default -> USUAL_ANGLE;
        };
    }
}
