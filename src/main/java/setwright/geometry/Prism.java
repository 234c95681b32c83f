package setwright.geometry;

import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

/** A region of the plan between two heights. */
public record Prism(Region region, double zLow, double zHigh) implements Single {
    public Prism {
        new Heights(zLow, zHigh);
    }

    /** An upright box. */
    public static Prism box(Point2 corner, Point2 opposite, double zLow, double zHigh) {
        return new Prism(Region.rectangle(corner, opposite), zLow, zHigh);
    }

    @Override
    public Box box() {
        return region.isEmpty() ? Box.EMPTY : new Box(region.box(), zLow, zHigh);
    }

    @Override
    public Region shadow(double low, double high) {
        return heights().share(new Heights(low, high)) ? region : Region.NONE;
    }

    @Override
    public Region core(double low, double high) {
        return heights().hold(new Heights(low, high)) ? region : Region.NONE;
    }

    @Override
    public @Nullable Heights column(Point2 place) {
        return region.contains(place) ? heights() : null;
    }

    @Override
    public boolean isStraight() {
        return true;
    }

    /** Exact where the axis stays upright, and for boxes; otherwise the box that holds it. */
    @Override
    public Prism placed(Placement placement) {
        if (placement.staysUpright()) {
            Heights moved = placement.upright(heights());
            return new Prism(region.mapped(placement.plan()), moved.low(), moved.high());
        }
        return placement.of(box()).solid();
    }

    @Override
    public boolean staysExact(Placement placement) {
        return placement.staysUpright() || isBox();
    }

    /** True for a box with its sides along the axes. */
    private boolean isBox() {
        double area = region.box().length() * region.box().depth();
        return !region.isEmpty() && Math.abs(region.area() - area) <= 1e-12 * area;
    }

    @Override
    public Kind kind() {
        return Kind.PRISM;
    }
}
