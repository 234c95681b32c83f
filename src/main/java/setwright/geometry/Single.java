package setwright.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** A solid in one piece, whose plan at one height follows from one rule. */
public sealed interface Single extends Solid permits Prism, UprightCylinder, UprightCone {
    double zLow();

    double zHigh();

    default Heights heights() {
        return new Heights(zLow(), zHigh());
    }

    /** The plan of what the solid fills over the whole of a height band; never more than that. */
    Region core(double zLow, double zHigh);

    /** The heights that the solid fills above and below a place in plan; none beside it. */
    @Nullable
    Heights column(Point2 place);

    /** True where the plan is the same at every height. */
    boolean isStraight();

    /** True where {@link #placed} shows this solid exactly, and not as a box that holds it. */
    boolean staysExact(Placement placement);

    @Override
    Single placed(Placement placement);

    @Override
    default List<Single> parts() {
        return List.of(this);
    }
}
