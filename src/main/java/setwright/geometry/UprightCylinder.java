package setwright.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** A round body or hole with an upright axis. */
public record UprightCylinder(Point2 axis, double radius, double zLow, double zHigh) implements Single {
    public UprightCylinder {
        new Heights(zLow, zHigh);
        if (!(radius > 0) || !Double.isFinite(radius)) {
            throw new IllegalArgumentException("A cylinder needs a radius above nought, not " + radius + ".");
        }
    }

    public Profile profile() {
        return Profile.cylinder(zLow, zHigh, radius);
    }

    /** The cylinder with a cone below it that ends in a point, as a drill leaves it. */
    public Union pointedDown(double pointHeight) {
        Profile point = new Profile(zLow - pointHeight, zLow, 0, radius);
        return new Union(List.of(this, new UprightCone(axis, point)));
    }

    @Override
    public Box box() {
        return new Box(PlanBox.of(axis, axis).grown(radius), zLow, zHigh);
    }

    @Override
    public Region shadow(double low, double high) {
        return heights().share(new Heights(low, high)) ? Region.circle(axis, radius) : Region.NONE;
    }

    @Override
    public Region core(double low, double high) {
        return heights().hold(new Heights(low, high)) ? Region.circle(axis, radius) : Region.NONE;
    }

    @Override
    public @Nullable Heights column(Point2 place) {
        return place.distance(axis) <= radius ? heights() : null;
    }

    @Override
    public boolean isStraight() {
        return true;
    }

    @Override
    public Single moved(Motion motion) {
        if (motion.staysUpright()) {
            Heights moved = motion.upright(heights());
            return new UprightCylinder(motion.plan().of(axis), radius, moved.low(), moved.high());
        }
        return Turned.of(motion.of(Point3.of(axis, zLow)), motion.of(Point3.of(axis, zHigh)), radius, radius);
    }

    @Override
    public boolean staysExact(Motion motion) {
        return true;
    }

    @Override
    public Kind kind() {
        return Kind.UPRIGHT_CYLINDER;
    }
}
