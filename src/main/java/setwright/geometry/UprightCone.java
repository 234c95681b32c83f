package setwright.geometry;

import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** A cone or a frustum with an upright axis: the radius changes evenly with height. */
public record UprightCone(Point2 axis, Profile profile) implements Single {
    private static final double POINT = 1e-9;

    @Override
    public double zLow() {
        return profile.zLow();
    }

    @Override
    public double zHigh() {
        return profile.zHigh();
    }

    @Override
    public Box box() {
        return new Box(PlanBox.of(axis, axis).grown(profile.greatestRadius()), zLow(), zHigh());
    }

    @Override
    public Region shadow(double low, double high) {
        if (!heights().share(new Heights(low, high))) {
            return Region.NONE;
        }
        return circle(Math.max(profile.radiusAt(low), profile.radiusAt(high)));
    }

    @Override
    public Region core(double low, double high) {
        if (!heights().hold(new Heights(low, high))) {
            return Region.NONE;
        }
        return circle(Math.min(profile.radiusAt(low), profile.radiusAt(high)));
    }

    private Region circle(double radius) {
        return radius > POINT ? Region.circle(axis, radius) : Region.NONE;
    }

    @Override
    public @Nullable Heights column(Point2 place) {
        double radius = place.distance(axis);
        return radius > profile.greatestRadius()
                ? null
                : new Heights(profile.lowestAsWideAs(radius), profile.highestAsWideAs(radius));
    }

    @Override
    public boolean isStraight() {
        return profile.isCylinder();
    }

    @Override
    public Single moved(Motion motion) {
        double low = profile.radiusLow();
        double high = profile.radiusHigh();
        if (motion.staysUpright()) {
            Heights moved = motion.upright(heights());
            boolean over = motion.turnsOver();
            Profile turned = new Profile(moved.low(), moved.high(), over ? high : low, over ? low : high);
            return new UprightCone(motion.plan().of(axis), turned);
        }
        return Turned.of(motion.of(Point3.of(axis, zLow())), motion.of(Point3.of(axis, zHigh())), low, high);
    }

    @Override
    public boolean staysExact(Motion motion) {
        return true;
    }

    @Override
    public Kind kind() {
        return Kind.UPRIGHT_CONE;
    }
}
