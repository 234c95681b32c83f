package setwright.geometry;

import org.jspecify.annotations.Nullable;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Gap;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Straight;

/**
 * A solid made ready.
 *
 * @param upright the profile to be taken off where it is upright; none where it is not
 * @param convex how far it reaches each way; none where it has hollows
 */
record Target(
        Single solid,
        Box box,
        @Nullable Profile upright,
        @Nullable Convex convex) {
    static @Nullable Target of(Single solid) {
        Box box = solid.box();
        if (box.isEmpty()) {
            return null;
        }
        return switch (solid.kind()) {
            case PRISM ->
                new Target(solid, box, Profile.cylinder(solid.zLow(), solid.zHigh(), 0), convex((Prism) solid));
            case UPRIGHT_CYLINDER ->
                round(solid, box, ((UprightCylinder) solid).axis(), ((UprightCylinder) solid).profile());
            case UPRIGHT_CONE -> round(solid, box, ((UprightCone) solid).axis(), ((UprightCone) solid).profile());
            case TURNED -> new Target(solid, box, null, (Turned) solid);
            case POLYHEDRON -> new Target(solid, box, null, (Polyhedron) solid);
            case UNION -> throw new IllegalArgumentException("A union is not a single solid.");
        };
    }

    private static Target round(Single solid, Box box, Point2 axis, Profile profile) {
        Point3 foot = Point3.of(axis, 0);
        return new Target(solid, box, profile, new SweptSection(profile, foot, foot));
    }

    private static @Nullable Convex convex(Prism prism) {
        return prism.region().isConvex()
                ? way -> Point3.of(
                        prism.region().outers().get(0).furthest(way.x(), way.y()),
                        way.z() > 0 ? prism.zHigh() : prism.zLow())
                : null;
    }

    Profile profile() {
        if (upright == null) {
            throw new IllegalStateException("Only an upright solid has an upright profile.");
        }
        return upright;
    }

    /** The distance of a path in plan from the prism, or from the axis of a round solid. */
    Gap gap(Edge path) {
        return switch (solid.kind()) {
            case PRISM -> ((Prism) solid).region().gap(path);
            case UPRIGHT_CYLINDER -> Gap.between(path, Straight.point(((UprightCylinder) solid).axis()));
            case UPRIGHT_CONE -> Gap.between(path, Straight.point(((UprightCone) solid).axis()));
            case TURNED, POLYHEDRON, UNION ->
                throw new IllegalArgumentException("Only an upright solid has one distance in plan.");
        };
    }
}
