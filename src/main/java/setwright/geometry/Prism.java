package setwright.geometry;

import java.util.List;
import java.util.stream.Stream;
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

    /**
     * Exact where the axis stays upright, and otherwise where the plan has no inward corners and no arcs; arcs are made
     * straight within {@link Region#FLATNESS}, and inward corners are filled.
     */
    @Override
    public Single moved(Motion motion) {
        return keepsItsForm(motion) ? kept(motion) : between(region.cornersAround(), motion);
    }

    @Override
    public Single within(Motion motion) {
        return keepsItsForm(motion) ? kept(motion) : between(region.cornersWithin(), motion);
    }

    private boolean keepsItsForm(Motion motion) {
        return region.isEmpty() || motion.staysUpright() || motion.isSquare() && region.isRectangle();
    }

    private Prism kept(Motion motion) {
        if (motion.staysUpright()) {
            Heights moved = motion.upright(heights());
            return new Prism(region.mapped(motion.plan()), moved.low(), moved.high());
        }
        return region.isEmpty() ? this : motion.of(box()).solid();
    }

    private Polyhedron between(List<Point2> plan, Motion motion) {
        return new Polyhedron(Stream.of(zLow, zHigh)
                .flatMap(z -> plan.stream().map(corner -> motion.of(Point3.of(corner, z))))
                .toList());
    }

    @Override
    public boolean staysExact(Motion motion) {
        return keepsItsForm(motion) || region.isConvex();
    }

    @Override
    public Kind kind() {
        return Kind.PRISM;
    }
}
