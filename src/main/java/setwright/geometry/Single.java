package setwright.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** A solid in one piece, whose plan at one height follows from one rule. */
public sealed interface Single extends Solid permits Prism, UprightCylinder, UprightCone, Turned, Polyhedron {
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

    /** The heights between which the area of the plan changes by one rule, from the lowest to the highest. */
    default List<Double> kinks() {
        return List.of(zLow(), zHigh());
    }

    /** The heights between which the stock shows what this takes away as one upright cut. */
    default List<Double> steps() {
        return kinks();
    }

    /** True where {@link #within} shows this solid, and not only a body that holds it. */
    boolean staysExact(Motion motion);

    @Override
    default Single placed(Placement placement) {
        return moved(Motion.of(placement));
    }

    @Override
    Single moved(Motion motion);

    /** The solid after a motion, never larger than it is; only where it {@link #staysExact stays exact}. */
    default Single within(Motion motion) {
        return moved(motion);
    }

    @Override
    default List<Single> parts() {
        return List.of(this);
    }
}
